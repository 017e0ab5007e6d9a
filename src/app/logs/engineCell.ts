import type { Cell } from '../../engine/index.js';
import { type CellValue, isCellError } from '../../sheet/index.js';

/** What stands in a cell, as the engine reads it. */
export function engineCell(value: CellValue): Cell {
  return isCellError(value) ? { error: value.basicValue } : value;
}
