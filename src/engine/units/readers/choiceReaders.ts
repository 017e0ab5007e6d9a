import type { Limits } from '../../result/problem.js';
import { ok, refuse } from '../../result/result.js';
import { isBlank, type Cell } from '../cell.js';
import { misplaced, parseQuantity } from '../parseQuantity.js';
import { shown } from '../shown.js';
import { dimensions, type DimensionName } from '../../dimensions/dimensions.js';
import { isWithin } from './quantityReaders.js';
import type { Reader } from './reader.js';

/** One of a closed list of words, case and spaces around it free. */
export function choiceIn<C extends string>(cell: Cell, choices: readonly C[]): Reader<C> {
  return (field) => {
    if (cell === null || isBlank(cell)) return refuse({ code: 'blank', at: { field }, kind: 'choice' });
    if (typeof cell === 'object') return refuse(misplaced(cell, { field }));
    const word = String(cell).trim().toLowerCase();
    const choice = choices.find((known) => known.toLowerCase() === word);
    return choice === undefined ? refuse({ code: 'not-a-choice', field, given: shown(cell), choices }) : ok(choice);
  };
}

/** A whole number within limits. */
export function wholeNumberIn(cell: Cell, limits: Limits, dimension: DimensionName = 'plain'): Reader<number> {
  return (field) => {
    const value = parseQuantity(cell, dimension, { field });
    const given = shown(cell);
    if (!value.ok) {
      const { code } = value.problem;
      if (code === 'blank') return refuse({ code, at: { field }, kind: 'whole' });
      const isNoNumber = code === 'not-a-value' || (code === 'unknown-unit' && dimension === 'plain');
      return isNoNumber ? refuse({ code: 'not-a-value', at: { field }, given, kind: 'whole' }) : value;
    }
    if (!Number.isInteger(value.value)) return refuse({ code: 'not-whole', field, given });
    return isWithin(value.value, limits)
      ? value
      : refuse({ code: 'out-of-limits', at: { field }, given, limits, unit: dimensions[dimension].unit });
  };
}

/** How many readings in a row start a hold. */
export function confirmIn(cell: Cell): Reader<1 | 2> {
  return (field) => {
    const count = wholeNumberIn(cell, {})(field);
    if (count.ok && (count.value === 1 || count.value === 2)) return ok(count.value);
    const isMisplaced = !count.ok && (count.problem.code === 'error-cell' || count.problem.code === 'many-cells');
    return isMisplaced ? count : refuse({ code: 'not-a-choice', field, given: shown(cell), choices: ['1', '2'] });
  };
}
