import * as limits from '../limits/limits.js';
import { medicineOf } from './medicineOf.js';
import { hoursPerDay } from '../units/quantity.js';
import type { PlanAction } from './planStep.js';

interface Course {
  readonly prepare: number;
  readonly start: number;
  readonly holdEnd: number;
  readonly secondBath: { readonly from: number; readonly until: number };
}

interface TimedAction {
  readonly when: number;
  readonly action: PlanAction;
}

interface MedicineSteps {
  readonly steps: readonly TimedAction[];
  /** When the second praziquantel bath is planned; null without one. [serial day] */
  readonly lastBath: number | null;
}

/** The first bath waits for the first copper test after the last change. [days] */
const firstBathAfter = limits.firstTestOut.value / hoursPerDay;

/**
 * What a plan does about each other medicine: praziquantel twice once the copper is out, metronidazole beside copper,
 * a warning before the first dose for all others.
 *
 * Definition: praziquantel before or after copper, days under copper never count for flukes; a medicine not known here
 * is listed as such, never left out.
 *
 * @param names medicines as the keeper names them
 * @param course times of the plan [serial day] and the window of the second bath [days]
 * @returns steps, and the last bath
 * @example medicineSteps(['formalin'], { prepare: 1, start: 2, holdEnd: 36, secondBath: { from: 7, until: 15 } }).steps.length // = 1
 */
export function medicineSteps(names: readonly string[], course: Course): MedicineSteps {
  const { prepare, start, holdEnd, secondBath } = course;
  const { from, until } = secondBath;
  const firstBath = holdEnd + firstBathAfter;
  const listed = new Set<string>();
  const steps = names.flatMap((given): readonly TimedAction[] => {
    const medicine = medicineOf(given);
    const repeated = medicine !== null && listed.has(medicine);
    listed.add(medicine ?? '');
    switch (medicine) {
      case null:
        return [{ when: prepare, action: { code: 'unknown-medicine', given } }];
      case 'praziquantel':
        if (repeated) return [];
        return [
          { when: firstBath, action: { code: 'praziquantel', from, until } },
          { when: firstBath + from, action: { code: 'second-praziquantel', from, until } },
        ];
      case 'metronidazole':
        return repeated ? [] : [{ when: start, action: { code: 'metronidazole' } }];
      case 'formalin':
      case 'binder':
      case 'low-salinity':
      case 'copper-remover':
      case 'more-copper':
        return [{ when: prepare, action: { code: 'warned-medicine', medicine, given } }];
    }
  });
  return { steps, lastBath: listed.has('praziquantel') ? firstBath + from : null };
}
