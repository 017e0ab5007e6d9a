import * as limits from '../limits/limits.js';
import { copperStates } from '../log/table/log.js';
import type { Treatment } from './treatment.js';

const known = new WeakMap<Treatment, Uint8Array>();

/**
 * Whether copper is in the water at each entry of a log: from the first dose or reading of copper until a reading that
 * shows it gone.
 *
 * @param treatment log and card
 * @returns 1 for each entry at which copper is in the water, its own reading and dose counted
 */
export function copperPresence(treatment: Treatment): Uint8Array {
  const before = known.get(treatment);
  if (before !== undefined) return before;
  const present = presentAt(treatment);
  known.set(treatment, present);
  return present;
}

function presentAt({ log, card }: Treatment): Uint8Array {
  const present = new Uint8Array(log.count);
  const trace = card.band.low * limits.copperTrace.value;
  const doses = log.numbers.dose;
  let isIn = 0;
  for (let index = 0; index < log.count; index++) {
    if (log.copper[index] === copperStates.reading) isIn = (log.low[index] ?? NaN) >= trace ? 1 : 0;
    if (doses !== null && (doses[index] ?? NaN) > 0) isIn = 1;
    present[index] = isIn;
  }
  return present;
}
