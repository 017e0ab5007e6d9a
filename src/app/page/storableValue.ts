import { type CellValue, isCellError } from '../../sheet/index.js';

const storable = new Set(['#DIV/0!', '#N/A', '#NAME?', '#NULL!', '#NUM!', '#REF!', '#VALUE!']);

/** Errors that only the grid makes have no place in a file. */
export function storableValue(value: CellValue): CellValue {
  if (!isCellError(value) || storable.has(value.basicValue)) return value;
  return { type: 'Error', basicValue: '#VALUE!' };
}
