import {
  BaseFunction,
  ErrorValueObject,
  type ArrayValueObject,
  type BaseValueObject,
  type ErrorType,
} from '@univerjs/engine-formula';
import { answerKind } from '../../engine/index.js';
import { addressOf, type Answer, type Given } from '../../sheet/index.js';
import { arrayObject, cellOf, gridOf, valueObject } from '../../sheet/library/index.js';
import type { BundledFunction } from './bundledFunction.js';
import { callFunction } from './callFunction.js';
import { cellName } from './functionCatalogue.js';
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
  return variant.isArray() ? gridOf(variant as ArrayValueObject) : cellOf(variant);
}

/** With the number format of moments: a serial day in an unformatted cell would say nothing. */
function valueObjectOf(answer: Answer, id: string): BaseValueObject {
  const formatOf = (heading?: unknown): string => (answerKind(id, heading) === 'time' ? 'yyyy-mm-dd hh:mm' : '');
  if (answer.kind === 'error') return ErrorValueObject.create(answer.code as ErrorType);
  if (answer.kind === 'cell') return valueObject(answer.value, formatOf());
  const formats = answer.rows[0]?.map(formatOf);
  return arrayObject(
    answer.rows,
    { unitId: '', sheetId: '', row: -1, column: -1 },
    (column) => formats?.[column] ?? '',
  );
}
