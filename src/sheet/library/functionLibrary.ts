import { LocaleType } from '@univerjs/core';
import {
  ALL_IMPLEMENTED_FUNCTIONS,
  CELL_INVERTED_INDEX_CACHE,
  type ArrayValueObject,
  type BaseFunction,
  type BaseValueObject,
  type FunctionVariantType,
} from '@univerjs/engine-formula';
import type { CellPlace } from '../address/cellRange.js';
import { sheetLimits } from '../address/sheetLimits.js';
import { errorCell } from '../cell/cellValue.js';
import { Area, isGrid, Lambda, CircularReference, type Value, type World } from '../evaluate/value.js';
import { UnreadableFormula } from '../formula/formulaNode.js';
import { AreaObject, readGrid } from './areaObject.js';
import { valueObject, cellOf, gridOf } from './valueObject.js';

/** The usual functions of a sheet, from a library. */
export interface FunctionLibrary {
  has(name: string): boolean;
  call(name: string, given: readonly (Value | undefined)[], at: { place: CellPlace; world: World }): Value;
}

/** These would ask the library's own sheet about hidden rows or formulas, and it has none; or they are not spreadsheet functions. */
const leftOut = new Set(
  `SUBTOTAL AGGREGATE CELL ISFORMULA FORMULATEXT SHEET SHEETS INDIRECT OFFSET IMAGE COMPARE DIVIDED MINUS MULTIPLY PLUS
  CUBE`.split(/\s+/),
);

let functions: ReadonlyMap<string, BaseFunction> | undefined;

/** Importing this file loads the library: import it only when a formula needs it. */
export function functionLibrary(): FunctionLibrary {
  const known = (functions ??= made());
  return {
    has: (name) => known.has(name),
    call(name, given, { place, world }) {
      const executor = known.get(name);
      if (executor === undefined || given.some((one) => one instanceof Lambda)) return errorCell('#NAME?');
      const { minParams, maxParams } = executor;
      const isMiscounted = minParams >= 0 && maxParams >= 0 && (given.length < minParams || given.length > maxParams);
      if (isMiscounted) return errorCell('#VALUE!');
      executor.setRefInfo('book', place.sheet, place.row, place.column);
      const objects = given.map((one) => givenObject(one, executor.needsReferenceObject, world));
      return answerOf(executor, objects);
    },
  };
}

function answerOf(executor: BaseFunction, objects: readonly FunctionVariantType[]): Value {
  try {
    // A function that says so takes a reference, whatever the type of the parameter says.
    const answer = executor.calculate(...(objects as BaseValueObject[]));
    return valueOf(answer as FunctionVariantType);
  } catch (fault) {
    const isKnown =
      fault instanceof CircularReference || fault instanceof UnreadableFormula || fault instanceof RangeError;
    if (isKnown || !(fault instanceof Error)) throw fault;
    // The library throws over some odd arguments instead of refusing them.
    throw new UnreadableFormula(`calls ${executor.name}, which failed here`, { cause: fault });
  } finally {
    CELL_INVERTED_INDEX_CACHE.clear();
  }
}

function made(): ReadonlyMap<string, BaseFunction> {
  return new Map(
    ALL_IMPLEMENTED_FUNCTIONS.filter(([, name]) => !leftOut.has(String(name))).map(([Function, name]) => {
      const executor: BaseFunction = new Function(name);
      executor.setLocale(LocaleType.EN_US);
      executor.setSheetRowColumnCount(sheetLimits.rows, sheetLimits.columns);
      return [String(name), executor] as const;
    }),
  );
}

function givenObject(value: Value | undefined, takesReferences: boolean, world: World): FunctionVariantType {
  if (value instanceof Area) return takesReferences ? new AreaObject(value, world) : readGrid(world.rows(value));
  if (isGrid(value)) return readGrid(value);
  return valueObject(value === undefined || value instanceof Lambda ? null : value);
}

function valueOf(answer: FunctionVariantType): Value {
  if (answer.isReferenceObject()) return errorCell('#VALUE!');
  const object = answer as BaseValueObject;
  if (!object.isArray()) return cellOf(object);
  const grid = gridOf(object as ArrayValueObject);
  if (grid.length === 0 || grid[0]?.length === 0) return errorCell('#CALC!');
  return grid.length === 1 && grid[0]?.length === 1 ? (grid[0][0] ?? null) : grid;
}
