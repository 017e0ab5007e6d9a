import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { columnKinds, headingKey, type ColumnKind } from './headings/columnKinds.js';

/** A range as the host gives it: rows of cells, in whatever shapes the host uses. */
export type RawRange = readonly (readonly unknown[])[];

/** A range and its argument's name in the contract. */
interface NamedRange {
  readonly name: string;
  readonly range: RawRange;
}

/**
 * Ranges of the same rows as columns of cells: each is one column or one row, and the first, the times, may be two
 * columns, date and time of day. Other shapes and unequal counts are refused.
 */
export function parallelRanges(when: NamedRange, ...others: readonly NamedRange[]): Result<RawRange[], Problem> {
  const columns: RawRange[] = [];
  for (const other of others) {
    const column = asColumn(other);
    if (!column.ok) return column;
    columns.push(column.value);
  }
  const rows = columns[0]?.length ?? 0;
  const times = isDateAndTime(when.range, rows) ? ok(when.range) : asColumn(when);
  if (!times.ok) return times;
  const unequal = columns.findIndex((column) => column.length !== times.value.length);
  if (unequal === -1) return ok([times.value, ...columns]);
  return refuse({
    code: 'unequal-ranges',
    first: when.name,
    firstCells: times.value.length,
    second: others[unequal]?.name ?? '',
    secondCells: columns[unequal]?.length ?? 0,
  });
}

/** Two columns of as many rows; a single row of two cells is two times if there are two readings. */
function isDateAndTime(range: RawRange, rows: number): boolean {
  return range[0]?.length === 2 && (range.length > 1 || rows === 1);
}

function asColumn({ name, range }: NamedRange): Result<RawRange, Problem> {
  const width = range[0]?.length ?? 0;
  if (width === 1) return ok(range);
  if (range.length === 1 && width > 1) return ok((range[0] ?? []).map((cell) => [cell]));
  return refuse({ code: 'not-a-line', field: name, rows: range.length, columns: width });
}

/** What heads the ranges of a call, beside what heads these columns of a log. */
const words = /\b(?:day|hour|clock|levels|results?|ppb|mg\/l|ug\/l|rise|raised|added)\b/;
const headed: readonly ColumnKind[] = ['time', 'copper', 'signs', 'note'];
const ofALog = columnKinds.filter(({ kind }) => headed.includes(kind));
const digitsOnly = /^[\s\d.,:/-]*$/;

/** Whether a text is a column's heading: words such as Date, Time, Copper, Cu ppm, Reading. */
export function isHeadingText(text: string): boolean {
  if (text.length > 60 || digitsOnly.test(text)) return false;
  const key = headingKey(text);
  return words.test(key) || ofALog.some((column) => column.words.test(key));
}
