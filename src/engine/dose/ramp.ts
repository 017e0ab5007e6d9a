import * as limits from '../limits/limits.js';
import type { Problem } from '../result/problem.js';
import { ok, type Result } from '../result/result.js';
import {
  copperMgPerLitre,
  hours,
  hoursPerDay,
  levelTolerance,
  serialDay,
  type CopperMgPerLitre,
  type CopperMgPerMl,
  type Litres,
  type Millilitres,
  type SerialDay,
} from '../units/quantity.js';
import { copperDose } from './copperDose.js';
import { copperRise } from './copperRise.js';
import type { FormName } from './forms.js';
import { pacePlan, type Pace } from './pacePlan.js';
import { splitDose } from './splitDose.js';

interface Raising {
  readonly volume: Litres;
  readonly level: CopperMgPerLitre;
  readonly wanted: CopperMgPerLitre;
  readonly strength: CopperMgPerMl;
  readonly start: SerialDay;
  readonly pace: Pace;
  readonly dosesADay?: number | undefined;
  readonly form?: FormName | undefined;
  readonly smallest: Millilitres;
}

export interface RampStep {
  readonly at: SerialDay;
  readonly dose: Millilitres;
  readonly levelAfter: CopperMgPerLitre;
  /** The day's first dose: never on an untested level. */
  readonly testFirst: boolean;
  /** From here on the test decides, not the plan. */
  readonly testDecides: boolean;
  /** One dose raises by more than this pace should. */
  readonly large: boolean;
  /** Most that one dose of this pace should raise, as a share of the wanted level. */
  readonly mostPerDose: number;
}

/**
 * Doses that raise a level step by step.
 *
 * level after(i) = level + running(i)·strength ÷ V
 *
 * Basis: copper as the element; nothing lost on the way.
 * Validity: as copperDose and splitDose.
 * Differs from the source: nothing.
 * Source: [Practice, pace, tests and the most one dose raises].
 *
 * @param raising.volume net volume of water [L]
 * @param raising.level level now [mg/L]
 * @param raising.wanted level wanted, never passed [mg/L]
 * @param raising.strength strength of the solution [mg Cu/mL]
 * @param raising.start time of the first dose [serial day]
 * @param raising.pace name, or number of days
 * @param raising.dosesADay doses in a day, else the pace's own [1]
 * @param raising.form form whose band may not be passed
 * @param raising.smallest smallest volume that can be measured [mL]
 * @returns a step for each dose, none where the level is the wanted one
 * @example ramp({ volume: litres(200), level: copperMgPerLitre(0), wanted: copperMgPerLitre(2.25), strength: copperMgPerMl(10), start: serialDay(46082), pace: 'gradual', smallest: millilitres(0.1) }).value.length // = 20
 */
export function ramp(raising: Raising): Result<readonly RampStep[], Problem> {
  const { volume, level, wanted, strength, start, smallest } = raising;
  const total = copperDose(raising);
  if (!total.ok) return total;
  if (total.value === 0) return ok([]);
  const plan = pacePlan(raising.pace);
  const { days, mostPerDose } = plan;
  const dosesADay = raising.dosesADay ?? plan.dosesADay;
  const hoursBetween = plan.roundTheClock ? hours(hoursPerDay / dosesADay) : undefined;
  const parts = splitDose({ total: total.value, dosesADay, days, hoursBetween, smallest });
  if (!parts.ok) return parts;
  // Of an equal share, not of the dose measured: rounding to the syringe makes no dose a large one.
  const large = (wanted - level) / (dosesADay * days) > mostPerDose * wanted + levelTolerance;
  const steps = parts.value.map(({ offset, dose, running }, i): RampStep => {
    const levelAfter = Math.min(wanted, level + copperRise({ volume, added: running, strength }));
    return {
      at: serialDay(start + offset / hoursPerDay),
      dose,
      levelAfter: copperMgPerLitre(levelAfter),
      testFirst: i % dosesADay === 0,
      testDecides: levelAfter >= limits.testDecides.value * wanted - levelTolerance,
      large,
      mostPerDose,
    };
  });
  return ok(steps);
}
