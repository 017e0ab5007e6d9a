import { isBlankOrZero } from '../log/rowTime.js';
import { ok, refuse } from '../result/result.js';
import type { Cell } from '../units/cell.js';
import { misplaced } from '../units/parseQuantity.js';
import type { Reader } from '../units/readers/reader.js';
import { namedMedicines } from './namedMedicines.js';

/** The medicines named in cells; a number is no name that is known, but it is listed. */
export function medicinesIn(cells: readonly Cell[]): Reader<readonly string[]> {
  return (field) => {
    const texts: string[] = [];
    for (const cell of cells) {
      if (cell === null || isBlankOrZero(cell)) continue;
      if (typeof cell === 'object') return refuse(misplaced(cell, { field }));
      texts.push(String(cell));
    }
    return ok(namedMedicines(texts));
  };
}
