import type { Cell } from '../cell.js';
import { ok } from '../../result/result.js';
import { days, type Days, type SerialDay } from '../quantity.js';
import { parseTime } from '../time/parseTime.js';
import { hoursIn } from './quantityReaders.js';
import type { Reader } from './reader.js';

export function timeIn(cell: Cell): Reader<SerialDay> {
  return (field) => parseTime(cell, { field });
}

/** The longest stretch without a test that does not start a hold anew; "none" switches the rule off. */
export function gapIn(cell: Cell): Reader<Days> {
  return (field) => {
    if (typeof cell === 'string' && cell.trim().toLowerCase() === 'none') return ok(days(Infinity));
    const gap = hoursIn(cell)(field);
    return gap.ok ? ok(days(gap.value / 24)) : gap;
  };
}
