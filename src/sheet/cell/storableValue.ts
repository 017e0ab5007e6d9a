import { isCellError, type CellValue } from './cellValue.js';
import { errorCode } from './errorCode.js';

const storable: ReadonlySet<string> = new Set([...Object.values(errorCode), '#GETTING_DATA']);

/** A value as a file can hold it: a later error, such as `#SPILL!`, a program shows by what it knows besides. */
export function storableValue(value: CellValue): CellValue {
  if (!isCellError(value) || storable.has(value.basicValue)) return value;
  return { ...value, basicValue: errorCode.invalidValue };
}
