import { addressOf } from './addressOf.js';
import type { CellRange } from './cellRange.js';

/** A rectangle of cells as `"B2:D9"`. */
export function addressRange({ firstRow, firstColumn, lastRow, lastColumn }: CellRange): string {
  return `${addressOf(firstRow, firstColumn)}:${addressOf(lastRow, lastColumn)}`;
}
