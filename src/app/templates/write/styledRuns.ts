import { addressOf, type CellRange } from '../../../sheet/index.js';
import type { Look } from '../plan/looks.js';
import type { SheetPlan } from '../plan/templatePlan.js';

/** Cells one below the other that look alike. */
interface StyledRun {
  readonly look: Look;
  /** A number format; `''` for none. */
  readonly format: string;
  readonly range: CellRange;
}

/** The looks of a sheet with their formats; the last look and the last format given for a cell decide. */
export function styledRuns({ name, areas }: Pick<SheetPlan, 'name' | 'areas'>): StyledRun[] {
  const columns = new Map<number, Map<number, { look?: Look; format: string }>>();
  for (const { range, look, format } of areas) {
    for (let column = range.firstColumn; column <= range.lastColumn; column++) {
      const rows = columns.get(column) ?? new Map<number, { look?: Look; format: string }>();
      columns.set(column, rows);
      for (let row = range.firstRow; row <= range.lastRow; row++) {
        const cell = rows.get(row) ?? { format: '' };
        if (look !== undefined) cell.look = look;
        if (format !== undefined) cell.format = format;
        rows.set(row, cell);
      }
    }
  }
  return [...columns].flatMap(([column, rows]) => runsOf(name, column, rows));
}

function runsOf(
  sheet: string,
  column: number,
  rows: ReadonlyMap<number, { look?: Look; format: string }>,
): StyledRun[] {
  const runs: { look: Look; format: string; firstRow: number; lastRow: number }[] = [];
  for (const [row, { look, format }] of [...rows].sort(([a], [b]) => a - b)) {
    if (look === undefined) throw new Error(`${sheet}!${addressOf(row, column)} has a format and no look`);
    const last = runs.at(-1);
    const isSame = last !== undefined && last.lastRow === row - 1 && last.look === look && last.format === format;
    if (isSame) last.lastRow = row;
    else runs.push({ look, format, firstRow: row, lastRow: row });
  }
  return runs.map(({ look, format, firstRow, lastRow }) => ({
    look,
    format,
    range: { firstRow, lastRow, firstColumn: column, lastColumn: column },
  }));
}
