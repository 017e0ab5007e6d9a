import { isCellError, type CellValue } from './cellValue.js';

const storableErrors = new Set(['#NULL!', '#DIV/0!', '#VALUE!', '#REF!', '#NAME?', '#NUM!', '#N/A', '#GETTING_DATA']);

/** The value as a file can hold it: errors newer than the formats, such as `#SPILL!`, are stored as `#VALUE!`. */
export function storableValue(value: CellValue): CellValue {
  return isCellError(value) && !storableErrors.has(value.basicValue) ? { type: 'Error', basicValue: '#VALUE!' } : value;
}
