import type { Place, Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { isBlank, type Cell } from './cell.js';
import { decimalText } from './decimalText.js';
import { shown } from './shown.js';
import { dimensions, unitKey, type Dimension, type DimensionName } from '../dimensions/dimensions.js';

/** A cell as a number in the unit of its dimension. There is no default for a unit that is not in the table. */
export function parseQuantity(cell: Cell, dimension: DimensionName, at: Place): Result<number, Problem> {
  if (typeof cell === 'number' && Number.isFinite(cell)) return ok(cell);
  if (cell === null || isBlank(cell)) return refuse({ code: 'blank', at, kind: dimension });
  if (typeof cell === 'object') return refuse(misplaced(cell, at));
  if (typeof cell !== 'string') return refuse({ code: 'not-a-value', at, given: shown(cell), kind: dimension });
  return parseText(cell, dimension, at);
}

/** An error cell, or several cells, where one value is wanted. */
export function misplaced(cell: Exclude<Cell, number | string | boolean | null>, at: Place): Problem {
  if ('error' in cell) return { code: 'error-cell', at, given: cell.error };
  return { code: 'many-cells', field: 'field' in at ? at.field : `row ${at.row}`, cells: cell.cells };
}

function parseText(text: string, name: DimensionName, at: Place): Result<number, Problem> {
  const given = shown(text);
  const number = decimalText(text);
  // A second number behind the first makes a range of it, or two numbers.
  if (number === null || /^[-–/]?\s*[\d.,]/.test(number.rest))
    return refuse({ code: 'not-a-value', at, given, kind: name });
  if (number.unclear) return refuse({ code: 'three-digits-after-comma', at, given });
  if (number.rest === '') return ok(number.value);
  const dimension: Dimension = dimensions[name];
  const key = unitKey(number.rest);
  if (name === 'plain') return refuse({ code: 'not-a-value', at, given, kind: name });
  const convert = dimension.convert.get(key);
  if (convert === undefined) return refuse({ code: 'unknown-unit', at, given, known: dimension.known });
  return ok(convert(number.value));
}
