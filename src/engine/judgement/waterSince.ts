import * as limits from '../limits/limits.js';
import { copperStates } from '../log/table/log.js';
import { basisOf, freeAmmoniaIn } from '../rules/freeAmmoniaIn.js';
import type { Treatment } from '../rules/treatment.js';
import { instantDays } from '../units/quantity.js';

/** Whether copper was tested after a moment, and ammonia with it where it is asked for. */
export function isTestedSince({ log }: Treatment, when: number, what: 'copper' | 'ammonia'): boolean {
  for (let index = log.count - 1; index >= 0 && (log.when[index] ?? NaN) - when >= instantDays; index--) {
    if (what === 'copper' && log.copper[index] === copperStates.reading) return true;
    if (what === 'ammonia' && (log.numbers.ammonia?.[index] ?? NaN) >= 0) return true;
  }
  return false;
}

/** Un-ionised ammonia of the last test, with its row; null: none that can be judged. [mg NH3/L] */
export function lastFreeAmmonia(treatment: Treatment): { readonly free: number; readonly index: number } | null {
  const { log } = treatment;
  const column = log.numbers.ammonia;
  if (column === null) return null;
  const basis = basisOf(treatment);
  for (let index = log.count - 1; index >= 0; index--) {
    const total = column[index] ?? NaN;
    if (Number.isNaN(total)) continue;
    const free = freeAmmoniaIn(treatment, basis)(total, index);
    return typeof free === 'number' ? { free, index } : null;
  }
  return null;
}

/** The salinity last measured, else the card's; null: neither says. [g/kg] */
export function lastSalinity({ log, card }: Treatment): number | null {
  const column = log.numbers.salinity;
  for (let index = log.count - 1; column !== null && index >= 0; index--) {
    const salinity = column[index] ?? NaN;
    if (salinity >= limits.salinityWritten.value) return salinity;
  }
  return card.salinity;
}
