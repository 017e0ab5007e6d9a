import * as limits from '../limits/limits.js';
import { copperPresence } from './copperPresence.js';
import { onlyNotEating } from './onlyNotEating.js';
import { signSteps, type SignRow } from './signs/signSteps.js';
import type { Treatment } from './treatment.js';

/**
 * The texts about the fish with the step each asks for, leaving out what was written before any copper was in the water,
 * and what says no more than that a fish does not eat on the day of its arrival: neither is a sign of copper.
 *
 * Source: [Practice].
 */
export function signsAfterArrival(treatment: Treatment): readonly SignRow[] {
  const { signs } = treatment;
  const arrivals = arrivalsOf(treatment);
  const copperSince = firstCopper(treatment);
  const isLeftOut = (row: SignRow): boolean => row.when < copperSince || isSettling(row, arrivals);
  return signs.some(isLeftOut) ? signSteps(signs.filter((row) => !isLeftOut(row))) : signs;
}

/** When copper was first in the water; -Infinity where the log never shows it, so that no text is lost. */
function firstCopper(treatment: Treatment): number {
  const first = copperPresence(treatment).indexOf(1);
  return first === -1 ? -Infinity : (treatment.log.when[first] ?? -Infinity);
}

function arrivalsOf({ log, card }: Treatment): readonly number[] {
  const arrivals: number[] = card.arrived === null ? [] : [card.arrived];
  const fishIn = log.texts['fish in'];
  for (let index = 0; fishIn !== null && index < log.count; index++) {
    const text = fishIn[index] ?? '';
    if (text !== '' && text !== '0') arrivals.push(log.when[index] ?? NaN);
  }
  return arrivals;
}

function isSettling({ when, reading, text }: SignRow, arrivals: readonly number[]): boolean {
  if (reading !== 'sign') return false;
  const justArrived = arrivals.some((arrived) => when >= Math.floor(arrived) && when < arrived + limits.settling.value);
  return justArrived && onlyNotEating(text);
}
