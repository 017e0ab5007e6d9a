import { addressOf } from '../address/addressOf.js';
import { rangeIn } from '../address/cellRange.js';
import type { CellWrite } from './cellWrite.js';
import type { SheetMap } from './sheetMap.js';
import type { Splice } from './splice.js';
import { tagWith } from './tagWith.js';

/** The range that the sheet says its cells lie in, where new ones lie outside; some programs read no further. */
export function grownDimension(xml: string, { dimension }: SheetMap, inserted: readonly CellWrite[]): Splice[] {
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
  const ref = `${addressOf(firstRow, firstColumn)}:${addressOf(lastRow, lastColumn)}`;
  return [
    { from: dimension.from, to: dimension.tagTo, text: tagWith(xml.slice(dimension.from, dimension.tagTo), { ref }) },
  ];
}
