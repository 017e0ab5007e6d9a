import type { Problem } from '../../result/problem.js';
import type { Result } from '../../result/result.js';
import { isBlank, type Cell } from '../../units/cell.js';
import { parseQuantity } from '../../units/parseQuantity.js';
import { columnKinds, headingKey } from '../headings/columnKinds.js';
import { readHeadings, type HeadingRead } from '../headings/readHeadings.js';
import type { RawRange } from '../parallelRanges.js';

/** A log as the host gives it, and how to make plain cells of what is in it. */
export interface LogRange {
  readonly range: RawRange;
  /** What the range's first row is called in findings: 1 where rows count within the range, the sheet's row for a file. */
  readonly firstRow: number;
  readonly cellOf: (raw: unknown) => Cell;
}

/** So many rows of titles may stand above the headings. */
const titleRows = 10;

/** The row of headings: the first that names a time and a copper column, else the first. From 0. */
export function headingRowOf({ range, cellOf }: LogRange): number {
  for (let row = 0; row < Math.min(titleRows, range.length); row++) {
    const kinds = new Set((range[row] ?? []).map((raw) => kindOf(cellOf(raw))));
    if (kinds.has('time') && kinds.has('copper')) return row;
  }
  return 0;
}

function kindOf(cell: Cell): string | null {
  if (typeof cell !== 'string' || cell.length > 80) return null;
  const key = headingKey(cell);
  return columnKinds.find(({ words }) => words.test(key))?.kind ?? null;
}

/** The headings of a log as they are understood. */
export function headingsIn(log: LogRange, row: number): Result<readonly HeadingRead[], Problem> {
  return readHeadings(headingTexts(log, row), (column) => holdsAmounts(log, row, column));
}

/** Whether most of what stands below a heading is a number or a volume, and not fish by name. */
function holdsAmounts({ range, cellOf }: LogRange, headingRow: number, column: number): boolean {
  const cells = range.slice(headingRow + 1).map((cells) => cellOf(cells[column]));
  const filled = cells.filter((cell) => !isBlank(cell));
  const amounts = filled.filter((cell) => parseQuantity(cell, 'millilitres', { row: 0 }).ok);
  return 2 * amounts.length >= filled.length;
}

/** The texts of the headings. */
function headingTexts({ range, cellOf }: LogRange, row: number): readonly string[] {
  return (range[row] ?? []).map((raw) => {
    const cell = cellOf(raw);
    return typeof cell === 'string' ? cell.trim() : typeof cell === 'number' ? String(cell) : '';
  });
}
