import {
  ArrayValueObject,
  BooleanValueObject,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
  type ErrorType,
} from '@univerjs/engine-formula';
import type { Nullable } from '@univerjs/core';
import { errorCell, isCellError, type CellValue } from '../cell/cellValue.js';
import type { Grid } from '../evaluate/value.js';

/** A cell as the library of formulas takes it; the format is that of a number. */
export function valueObject(value: CellValue, format = ''): BaseValueObject {
  if (value === null) return NullValueObject.create();
  if (isCellError(value)) return ErrorValueObject.create(value.basicValue as ErrorType);
  if (typeof value === 'number') return NumberValueObject.create(value, format);
  if (typeof value === 'boolean') return BooleanValueObject.create(value);
  return StringValueObject.create(value);
}

/** A grid as the library takes it, each cell with its number format. */
export function arrayObject(grid: Grid, place: ArrayPlace, formatOf?: FormatOf): ArrayValueObject {
  return ArrayValueObject.create({
    calculateValueList: grid.map((row) => row.map((value, column) => valueObject(value, formatOf?.(column)))),
    rowCount: grid.length,
    columnCount: grid[0]?.length ?? 0,
    ...place,
  });
}

type FormatOf = (column: number) => string;

interface ArrayPlace {
  readonly unitId: string;
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

/** A cell as the library gives it. */
export function cellOf(object: Nullable<BaseValueObject>): CellValue {
  if (!object || object.isNull()) return null;
  return object.isError() ? errorCell((object as ErrorValueObject).getErrorType()) : object.getValue();
}

/** The rows of an array as the library gives it. */
export function gridOf(array: ArrayValueObject): CellValue[][] {
  return Array.from({ length: array.getRowCount() }, (_, row) =>
    Array.from({ length: array.getColumnCount() }, (__, column) => cellOf(array.get(row, column))),
  );
}
