import { systemKey } from '../../engine/index.js';
import type { BookSheet, CellRange } from '../../sheet/index.js';
import { columnKindOf } from './columnKindOf.js';
import { valueAt } from './valueAt.js';
import { writtenText } from './writtenText.js';

/** The systems that the rows of a log name, as first written, in the order in which they appear. */
export function systemsOf(sheet: BookSheet, { firstRow, firstColumn, lastRow, lastColumn }: CellRange): string[] {
  let column = firstColumn;
  while (column <= lastColumn && columnKindOf(writtenText(sheet, firstRow, column)) !== 'system') column++;
  if (column > lastColumn) return [];
  const heading = systemKey(writtenText(sheet, firstRow, column));
  const names = new Map<string, string>();
  for (let row = firstRow + 1; row <= lastRow; row++) {
    const value = valueAt(sheet, row, column);
    if (typeof value !== 'string' && typeof value !== 'number') continue;
    const name = String(value).trim();
    const key = systemKey(name);
    if (key !== '' && key !== heading && !names.has(key)) names.set(key, name);
  }
  return [...names.values()];
}
