import type { Cell } from '../../index.js';
import { isCellError, type CellValue } from '../host/cellValue.js';

/** What stands in a cell, as the engine reads it. */
export function engineCell(value: CellValue): Cell {
  return isCellError(value) ? { error: value.basicValue } : value;
}
