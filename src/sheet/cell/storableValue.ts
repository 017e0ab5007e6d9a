import { isCellError, type CellValue } from './cellValue.js';
import { errorCode } from './errorCode.js';

const storable: ReadonlySet<string> = new Set([...Object.values(errorCode), '#GETTING_DATA']);

/** A value as a file can hold it. */
export function storableValue(value: CellValue): CellValue {
  return isCellError(value) ? { ...value, basicValue: storedError(value.basicValue) } : value;
}

/** An error as a file can hold it: a later one, such as `#SPILL!`, a program shows by what it knows besides. */
export function storedError(code: string): string {
  return storable.has(code) ? code : errorCode.invalidValue;
}
