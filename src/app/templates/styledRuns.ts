import { addressOf, cellRange } from '../../sheet/index.js';
import type { Look, SheetPlan } from './templatePlan.js';

/** Cells one below the other that look alike. */
interface StyledRun {
  readonly look: Look;
  /** A number format; `''` for none. */
  readonly format: string;
  readonly first: string;
  readonly last: string;
}

/** The looks of a sheet with their formats; the last look and the last format given for a cell decide. */
export function styledRuns({ name, looks, formats }: SheetPlan): StyledRun[] {
  const columns = new Map<number, Map<number, { look?: Look; format: string }>>();
  for (const { range, look } of looks) each(columns, range, (cell) => (cell.look = look));
  for (const { range, format } of formats) each(columns, range, (cell) => (cell.format = format));
  return [...columns].flatMap(([column, rows]) => runsOf(name, column, rows));
}

type Styled = { look?: Look; format: string };

function each(columns: Map<number, Map<number, Styled>>, range: string, set: (cell: Styled) => void): void {
  const { firstRow, firstColumn, lastRow, lastColumn } = cellRange(range);
  for (let column = firstColumn; column <= lastColumn; column++) {
    const rows = columns.get(column) ?? new Map<number, Styled>();
    columns.set(column, rows);
    for (let row = firstRow; row <= lastRow; row++) {
      const cell = rows.get(row) ?? { format: '' };
      rows.set(row, cell);
      set(cell);
    }
  }
}

function runsOf(sheet: string, column: number, rows: ReadonlyMap<number, Styled>): StyledRun[] {
  const runs: { look: Look; format: string; from: number; to: number }[] = [];
  for (const [row, { look, format }] of [...rows].sort(([a], [b]) => a - b)) {
    if (look === undefined) throw new Error(`${sheet}!${addressOf(row, column)} has a format and no look`);
    const last = runs.at(-1);
    if (last !== undefined && last.to === row - 1 && last.look === look && last.format === format) last.to = row;
    else runs.push({ look, format, from: row, to: row });
  }
  return runs.map(({ look, format, from, to }) => ({
    look,
    format,
    first: addressOf(from, column),
    last: addressOf(to, column),
  }));
}
