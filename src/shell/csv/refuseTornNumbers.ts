import { FileProblem } from '../zip/fileProblem.js';
import { isWordsRecord } from './isWordsRecord.js';

const whole = /^\s*[+-]?\d{1,4}$/;
const decimals = /^\d{1,3}\s*$/;

/**
 * Where commas part the fields, an unquoted 2,05 falls into two: its row is longer than the headings above. Such a file is
 * refused, as the reading would become 2.
 */
export function refuseTornNumbers(records: readonly (readonly string[])[]): void {
  let headings = Infinity;
  let afterBlank = true;
  for (const [row, record] of records.entries()) {
    const isBlank = record.every((field) => field.trim() === '');
    const isWider = record.length > headings && record.slice(headings).some((field) => field.trim() !== '');
    if (isWider) refuseTorn(record, row, headings);
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
