import type { Nullable } from '@univerjs/core';
import {
  ArrayValueObject,
  BaseFunction,
  ErrorValueObject,
  type BaseValueObject,
  type ErrorType,
} from '@univerjs/engine-formula';
import { addressOf, type CellValue, type Given } from '../../sheet/index.js';
import { valueObject } from '../../sheet/library/index.js';
import type { Answer } from './answer.js';
import { callFunction } from './callFunction.js';
import { cellName } from './functionCatalogue.js';
import { answerFormat } from './answerFormat.js';
import type { BundledFunction } from './bundledFunction.js';
import { Refusals } from './refusals.js';

type Executor = [new (name: string) => BaseFunction, string];

/** The bundle's functions as the sheet's formula engine takes them, each noting why it refused. */
export function formulaExecutors(bundle: readonly BundledFunction[], refusals: Refusals): Executor[] {
  return bundle.map((bundled) => [executorClass(bundled, refusals), cellName(bundled.entry)]);
}

function executorClass({ entry, implementation, allowErrors }: BundledFunction, refusals: Refusals): Executor[0] {
  return class extends BaseFunction {
    override calculate(...variants: BaseValueObject[]): BaseValueObject {
      const address = `${this.subUnitId}!${addressOf(this.row, this.column)}`;
      const answer = callFunction({ entry, implementation, given: variants.map(givenOf), allowErrors, address });
      const cell = Refusals.cell(this.subUnitId ?? '', this.row, this.column);
      if (answer.kind === 'error') refusals.note(cell, answer.message);
      else refusals.clear(cell);
      return valueObjectOf(answer, entry.id);
    }
  };
}

function givenOf(variant: BaseValueObject): Given {
  if (!variant.isArray()) return cellValueOf(variant);
  const array = variant as ArrayValueObject;
  return Array.from({ length: array.getRowCount() }, (_, row) =>
    Array.from({ length: array.getColumnCount() }, (__, column) => cellValueOf(array.get(row, column))),
  );
}

function cellValueOf(object: Nullable<BaseValueObject>): CellValue {
  if (!object || object.isNull()) return null;
  if (object.isError()) return { type: 'Error', basicValue: (object as ErrorValueObject).getErrorType() };
  return object.getValue();
}

function valueObjectOf(answer: Answer, id: string): BaseValueObject {
  if (answer.kind === 'error') return ErrorValueObject.create(answer.code as ErrorType);
  if (answer.kind === 'cell') return valueObject(answer.value, answerFormat(id, undefined));
  const heading = answer.rows[0] ?? [];
  return ArrayValueObject.create({
    calculateValueList: answer.rows.map((row) =>
      row.map((value, column) => valueObject(value, answerFormat(id, heading[column]))),
    ),
    rowCount: answer.rows.length,
    columnCount: heading.length,
    unitId: '',
    sheetId: '',
    row: -1,
    column: -1,
  });
}
