import { FileProblem } from '../zip/fileProblem.js';
import { isWordsRecord } from './plainFields.js';
import { numberText } from './numberText.js';

const whole = /^\s*[+-]?\d{1,4}$/;
const decimals = /^\d{1,3}\s*$/;

/** The decimals of 2,05; nobody writes a whole number like that. */
const zeroAhead = /^0\d\s*$/;

/**
 * Where commas separate the fields, an unquoted 2,05 becomes two fields: its row is longer than the headings above, or a 05
 * follows a 2 in a file without any decimal point. Such a file is refused, for the number would become 2.
 */
export function refuseTornNumbers(records: readonly (readonly string[])[]): void {
  let headings = Infinity;
  let afterBlank = true;
  for (const [row, record] of records.entries()) {
    const isBlank = record.every((field) => field.trim() === '');
    const isWider = record.length > headings && record.slice(headings).some((field) => field.trim() !== '');
    if (isWider) refuseTorn(record, row, headings);
    if (record.length > 1 && !isWider) refuseZeroAhead(record, row, records);
    const mayHead = afterBlank || headings === Infinity || record.length >= headings;
    if (mayHead && !isBlank && isWordsRecord(record)) headings = record.length;
    afterBlank = isBlank;
  }
}

function refuseTorn(record: readonly string[], row: number, headings: number): void {
  const at = record.findIndex((field, column) => whole.test(field) && decimals.test(record[column + 1] ?? ''));
  if (at === -1) return;
  const [first, second] = [record[at]?.trim() ?? '', record[at + 1]?.trim() ?? ''];
  throw new FileProblem(
    `Row ${row + 1} has ${record.length} fields under ${headings} headings, and ${first},${second} in it may be one number or two; ` +
      `write "${first},${second}" in quotes or ${first}.${second}, or say whether decimals have a point or a comma`,
  );
}

function refuseZeroAhead(record: readonly string[], row: number, records: readonly (readonly string[])[]): void {
  const at = record.findIndex((field, column) => whole.test(field) && zeroAhead.test(record[column + 1] ?? ''));
  if (at === -1) return;
  const showsPoint = records.some((each) => each.some((field) => numberText(field)?.mark === '.'));
  if (showsPoint) return;
  const [first, second] = [record[at]?.trim() ?? '', record[at + 1]?.trim() ?? ''];
  throw new FileProblem(
    `In row ${row + 1} a ${second} stands behind a ${first}, so ${first},${second} may be one number or two; ` +
      `write "${first},${second}" in quotes or ${first}.${second}, or say whether decimals have a point or a comma`,
  );
}
