import { refuse } from '../result/result.js';
import type { Cell } from '../units/cell.js';
import { decimalText } from '../units/decimalText.js';
import { choiceIn, wholeNumberIn } from '../units/readers/choiceReaders.js';
import type { Reader } from '../units/readers/reader.js';
import { shown } from '../units/shown.js';
import { paceNames, type Pace } from './pacePlan.js';

/** A named pace, or a whole number of days. */
export function paceIn(cell: Cell): Reader<Pace> {
  return (field) => {
    if (typeof cell === 'string' && decimalText(cell) === null) return choiceIn(cell, paceNames)(field);
    if (typeof cell !== 'boolean') return wholeNumberIn(cell, { min: 1, max: 365 }, 'days')(field);
    return refuse({ code: 'not-a-choice', field, given: shown(cell), choices: paceNames });
  };
}
