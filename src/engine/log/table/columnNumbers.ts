import type { Place, Problem } from '../../result/problem.js';
import { ok, refuse, type Result } from '../../result/result.js';
import type { Cell } from '../../units/cell.js';
import { decimalText } from '../../units/decimalText.js';
import { parseQuantity } from '../../units/parseQuantity.js';
import { isWithin } from '../../units/readers/quantityReaders.js';
import { shown } from '../../units/shown.js';
import { dimensions, unitKey, type Dimension, type DimensionName } from '../../dimensions/dimensions.js';
import type { Limits } from '../../result/problem.js';

/** The US and the imperial gallon differ by a fifth: the card says which one "gal" means. */
export type Gallon = 'US' | 'imperial';

export interface NumberColumn {
  readonly dimension: DimensionName;
  readonly limits: Limits;
  /** The heading's unit, for bare numbers. */
  readonly unit: string | null;
  readonly gallon: Gallon;
}

/** A cell of a column of numbers in the unit of its dimension; a bare number is in the heading's unit. */
export function columnNumber(cell: Cell, column: NumberColumn, at: Place): Result<number, Problem> {
  const value = inOwnUnit(cell, column, at);
  if (!value.ok || isWithin(value.value, column.limits)) return value;
  const { unit } = dimensions[column.dimension];
  return refuse({ code: 'out-of-limits', at, given: shown(cell), limits: column.limits, unit });
}

function inOwnUnit(cell: Cell, { dimension, unit, gallon }: NumberColumn, at: Place): Result<number, Problem> {
  if (typeof cell === 'number') return ok(unit === null ? cell : converted(cell, unit, dimension, gallon));
  if (typeof cell === 'string') {
    const number = decimalText(cell);
    if (number !== null && number.rest === '' && !number.unclear && unit !== null) {
      return ok(converted(number.value, unit, dimension, gallon));
    }
    if (number !== null && gallon === 'imperial' && /^gal(?:lons?)?$/.test(unitKey(number.rest))) {
      return ok(converted(number.value, 'impgal', dimension, gallon));
    }
  }
  return parseQuantity(cell, dimension, at);
}

function converted(value: number, unit: string, dimension: DimensionName, gallon: Gallon): number {
  const { convert }: Dimension = dimensions[dimension];
  const key = gallon === 'imperial' && /^gal(?:lons?)?$/.test(unit) ? 'impgal' : unit;
  return convert.get(key)?.(value) ?? value;
}
