import { pacePlan } from '../dose/pacePlan.js';
import type { Treatment } from '../rules/treatment.js';
import type { Task } from './task.js';

/**
 * The next dose: what is missing to the aim, but one dose raises by no more than the pace allows, a quarter of the aim,
 * half when urgent, and never past the top of the band.
 *
 * Definition: mL = V·rise ÷ strength.
 */
export function doseNow({ card }: Treatment, level: number, raising: boolean): Task {
  const { volume, strength, pace } = card;
  const aim = Math.min(card.aim, card.band.high);
  if (strength === null) return { kind: 'strength missing' };
  const rise = Math.min(aim - level, pacePlan(pace).mostPerDose * aim);
  return { kind: 'dose', millilitres: (volume * rise) / strength, from: level, to: level + rise, raising };
}
