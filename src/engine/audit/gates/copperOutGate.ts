import * as limits from '../../limits/limits.js';
import type { Treatment } from '../../rules/treatment.js';
import { hoursPerDay, secondDays, levelTolerance } from '../../units/quantity.js';
import type { Gate } from './gate.js';
import { eventKinds } from '../../log/waterEvents.js';
import { treatmentPhases } from '../treatmentPhases.js';

/** Copper comes back off silicone and sand: these tests after the last change show that it does not. [Practice] [days] */
const firstTest = limits.firstTestOut.value / hoursPerDay;
const secondTest = limits.secondTestOut.value / hoursPerDay;

/** Whether the copper is out, by a test 48 h and another 7 days after the last change of water that took it out. */
export function copperOutGate(treatment: Treatment): Gate {
  const name = 'copper out';
  const no = (why: Gate['why']): Gate => ({ name, met: 'no', since: null, why });
  const gone = copperGone(treatment);
  switch (gone.kind) {
    case 'not begun':
      return no({ code: 'not-tested-out' });
    case 'in':
      return no({ code: 'copper-in', level: gone.level, row: gone.row, when: gone.when, limit: gone.limit });
    case 'out': {
      const { change, tests } = gone;
      const first = tests.find((when) => when >= change + firstTest - secondDays);
      if (first === undefined) return no({ code: 'test-due', after: 'first', change, due: change + firstTest });
      const second = tests.find((when) => when > first && when >= change + secondTest - secondDays);
      if (second === undefined) return no({ code: 'test-due', after: 'second', change, due: change + secondTest });
      return { name, met: 'yes', since: second, why: { code: 'copper-out', change, tested: second } };
    }
  }
}

/** What the tests after the hold say of the copper. */
type CopperGone =
  | { readonly kind: 'not begun' }
  | { readonly kind: 'in'; readonly level: number; readonly row: number; readonly when: number; readonly limit: number }
  | {
      readonly kind: 'out';
      /** The first reading that shows it gone, as all after it do. [serial day] */
      readonly from: number;
      /** The last water change before that; that reading where none is written. [serial day] */
      readonly change: number;
      /** All readings that show it gone. [serial day] */
      readonly tests: readonly number[];
    };

/**
 * Whether the copper is out of the water after the hold.
 *
 * Definition: every reading from one on at or below 0.02 mg/L, or the meter's accuracy up to 0.1; "<" up to 0.1 counts.
 *
 * @param treatment log and card
 * @returns the state, with the readings that show it
 */
export function copperGone(treatment: Treatment): CopperGone {
  const { readings, card, events } = treatment;
  const { holdTo } = treatmentPhases(treatment);
  if (holdTo === Infinity) return { kind: 'not begun' };
  const limit = Math.max(limits.copperGone.value, Math.min(card.meterAccuracy ?? 0, limits.goneBound.value));
  const tests: number[] = [];
  for (let index = readings.count - 1; index >= 0; index--) {
    const row = readings.row[index] ?? 0;
    const odd = readings.odd.get(row);
    const high = odd?.high ?? readings.low[index] ?? NaN;
    const isOut = high <= (odd?.under === undefined ? limit : limits.goneBound.value) + levelTolerance;
    const when = readings.when[index] ?? NaN;
    if (!isOut && tests.length === 0) return { kind: 'in', level: high, row, when, limit };
    if (!isOut) break;
    tests.unshift(when);
  }
  const [from = Infinity] = tests;
  let change = -Infinity;
  for (let index = 0; index < events.count; index++) {
    const when = events.when[index] ?? NaN;
    if (events.kind[index] === eventKinds.change && when <= from) change = when;
  }
  return { kind: 'out', from, change: change > holdTo ? change : from, tests };
}
