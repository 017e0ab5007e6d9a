import { answerKind, isoFromSerial } from '../../engine/index.js';
import { type CellValue, isCellError } from '../../sheet/index.js';
import { printable } from './printable.js';

interface TableTerms {
  /** The function that gave the table: it says which columns are times. */
  readonly id: string;
  /** A person reads: columns stand under each other, and times are dates. Otherwise a tab separates the cells. */
  readonly aligned: boolean;
}

/** A table as lines of text. */
export function textTable(rows: readonly (readonly CellValue[])[], { id, aligned }: TableTerms): string {
  const heading = rows[0] ?? [];
  const isTime = heading.map((name) => aligned && answerKind(id, name) === 'time');
  const texts = rows.map((row) => row.map((cell, column) => cellText(cell, isTime[column] === true)));
  if (!aligned) return texts.map((row) => row.join('\t')).join('\n');
  const widths = heading.map((_, column) => Math.max(...texts.map((row) => (row[column] ?? '').length)));
  const isNumber = heading.map(
    (_, column) => isTime[column] !== true && rows.slice(1).every((row) => isNumberOrNothing(row[column])),
  );
  return texts.map((row) => alignedRow(row, widths, isNumber)).join('\n');
}

/** One cell as text: a number with all its digits, or as a date and time. */
export function cellText(value: CellValue, isTime: boolean): string {
  if (value === null) return '';
  if (isCellError(value)) return value.basicValue;
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (typeof value === 'number') return isTime ? isoFromSerial(value) : String(value);
  return printable(value).replace(/[\t\n]/g, ' ');
}

function alignedRow(row: readonly string[], widths: readonly number[], toTheRight: readonly boolean[]): string {
  return row
    .map((text, column) =>
      toTheRight[column] === true ? text.padStart(widths[column] ?? 0) : text.padEnd(widths[column] ?? 0),
    )
    .join('  ')
    .trimEnd();
}

function isNumberOrNothing(cell: CellValue | undefined): boolean {
  return typeof cell === 'number' || cell === '' || cell === null || cell === undefined;
}
