import { onlyNotEating } from './onlyNotEating.js';
import { signSteps, type SignRow } from './signs/signSteps.js';
import type { Treatment } from './treatment.js';

/** From the midnight before until so long after it came in, a fish counts as just arrived. [days] */
const settling = 1;

/**
 * The texts about the fish with the step each asks for, leaving out what says no more than that a fish does not eat on
 * the day of its arrival: that is not a sign.
 *
 * Source: [Practice].
 */
export function signsAfterArrival(treatment: Treatment): readonly SignRow[] {
  const { signs } = treatment;
  const arrivals = arrivalsOf(treatment);
  if (arrivals.length === 0 || !signs.some((row) => isSettling(row, arrivals))) return signs;
  return signSteps(signs.filter((row) => !isSettling(row, arrivals)));
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
  const justArrived = arrivals.some((arrived) => when >= Math.floor(arrived) && when < arrived + settling);
  return justArrived && onlyNotEating(text);
}
