import {
  BooleanValueObject,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
  type ErrorType,
} from '@univerjs/engine-formula';
import { isCellError, type CellValue } from '../cell/cellValue.js';

/** A cell as the library of formulas takes it; the format is that of a number. */
export function valueObject(value: CellValue, format = ''): BaseValueObject {
  if (value === null) return NullValueObject.create();
  if (isCellError(value)) return ErrorValueObject.create(value.basicValue as ErrorType);
  if (typeof value === 'number') return NumberValueObject.create(value, format);
  if (typeof value === 'boolean') return BooleanValueObject.create(value);
  return StringValueObject.create(value);
}
