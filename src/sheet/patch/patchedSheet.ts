import { addressRange } from '../address/addressOf.js';
import { type CellRange, isInside, rangeIn } from '../address/cellRange.js';
import { cellWithFormula } from './cellEdit.js';
import type { CellWrite, CellWrites } from './cellWrite.js';
import { tagWith } from './tagWith.js';
import { heirs } from './heirs.js';
import { newRows } from './newRows.js';
import { readSheet } from './readSheet.js';
import { rowChange, type RowChange } from './rowChange.js';
import { sameFormula } from './formulaPiece.js';
import type { SheetContext } from './workbookContext.js';
import type { CellAt, SheetMap } from './sheetMap.js';
import { spliced, type Splice } from './splice.js';

interface PatchedSheet {
  readonly xml: string;
  readonly otherFormulas: boolean;
}

/** The XML of a sheet with the cells of the writes spliced in. */
export function patchedSheet(
  xml: string,
  part: string,
  rows: CellWrites,
  file: Omit<SheetContext, 'isFilled' | 'masters' | 'heirs'>,
): PatchedSheet {
  const map = readSheet(xml, part, rows);
  const context = { ...file, ...sheetContext(xml, map, rows) };
  const changes: RowChange[] = [];
  const missing = new Map(rows);
  for (const [number, ofRow] of rows) {
    const row = map.rows.get(number);
    if (!row) continue;
    missing.delete(number);
    changes.push(rowChange(xml, row, ofRow, { map, context }));
  }
  changes.push(newRows(xml, missing, { map, context }));
  const splices = [
    ...changes.flatMap((change) => change.splices),
    ...heirSplices(xml, context.heirs, rows),
    ...grownDimension(
      xml,
      map,
      changes.flatMap(({ inserted }) => inserted),
    ),
  ];
  return { xml: spliced(xml, splices), otherFormulas: changes.some((change) => change.otherFormulas) };
}

function sheetContext(
  xml: string,
  map: SheetMap,
  rows: CellWrites,
): Pick<SheetContext, 'isFilled' | 'masters' | 'heirs'> {
  const keeps = (cell: CellAt): boolean => {
    const write = rows.get(cell.row)?.get(cell.column);
    return write === undefined || sameFormula(write, cell, map.masters);
  };
  const filled = filledRanges(map, rows);
  return {
    masters: map.masters,
    heirs: heirs(xml, map, keeps),
    isFilled: (row, column) => filled.some((range) => isInside(range, row, column)),
  };
}

/** What array formulas fill after all writes. */
function filledRanges({ arrays }: SheetMap, rows: CellWrites): CellRange[] {
  const filled = [...rows.values()].flatMap((row) => [...row.values()].flatMap(({ fills }) => fills ?? []));
  for (const { row, column, range } of arrays) {
    const write = rows.get(row)?.get(column);
    if (write?.formula === undefined && write?.fills === undefined) filled.push(range);
  }
  return filled;
}

/** Changes in cells that take over a formula but are not written to. */
function heirSplices(xml: string, found: ReadonlyMap<CellAt, string>, rows: CellWrites): Splice[] {
  const alone = [...found].filter(([{ row, column }]) => !rows.get(row)?.has(column));
  return alone.map(([cell, formula]) => ({ from: cell.from, to: cell.to, text: cellWithFormula(xml, cell, formula) }));
}

/** Extends the range that the sheet states for its cells to new ones outside it; some programs read no further. */
function grownDimension(xml: string, { dimension }: SheetMap, inserted: readonly CellWrite[]): Splice[] {
  const range = rangeIn(dimension?.attributes['ref']);
  if (!dimension || !range || inserted.length === 0) return [];
  let { firstRow, firstColumn, lastRow, lastColumn } = range;
  for (const { row, column } of inserted) {
    [firstRow, lastRow] = [Math.min(firstRow, row), Math.max(lastRow, row)];
    [firstColumn, lastColumn] = [Math.min(firstColumn, column), Math.max(lastColumn, column)];
  }
  const grown =
    firstRow < range.firstRow ||
    firstColumn < range.firstColumn ||
    lastRow > range.lastRow ||
    lastColumn > range.lastColumn;
  if (!grown) return [];
  const ref = addressRange({ firstRow, firstColumn, lastRow, lastColumn });
  return [
    { from: dimension.from, to: dimension.tagTo, text: tagWith(xml.slice(dimension.from, dimension.tagTo), { ref }) },
  ];
}
