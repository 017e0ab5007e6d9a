import * as limits from '../limits/limits.js';

/** How fast a level is raised. [Practice] */
interface PacePlan {
  readonly days: number;
  readonly dosesADay: number;
  /** Doses over all 24 hours, for the time when the delay is the greater risk; else over a 12-hour day. */
  readonly roundTheClock: boolean;
  /** Most that one dose raises, as a share of the wanted level. */
  readonly mostPerDose: number;
}

type PaceName = 'gradual' | 'sensitive' | 'urgent';

/** A named pace, or a number of days. */
export type Pace = PaceName | number;

export const paceNames = ['gradual', 'sensitive', 'urgent'] as const satisfies readonly PaceName[];

const byDay = { dosesADay: limits.dosesADay.value, roundTheClock: false, mostPerDose: limits.mostPerDose.value };

const paces: Readonly<Record<PaceName, PacePlan>> = {
  gradual: { ...byDay, days: limits.gradualDays.value },
  sensitive: { ...byDay, days: limits.sensitiveDays.value },
  urgent: {
    days: limits.urgentDays.value,
    dosesADay: limits.urgentDosesADay.value,
    roundTheClock: true,
    mostPerDose: limits.urgentMostPerDose.value,
  },
};

/**
 * Days, doses and limits of a pace.
 *
 * Definition: the table above; a number of days has the doses of a gradual day.
 *
 * @param pace name, or number of days
 * @returns the pace's plan
 * @example pacePlan('sensitive').days // = 7
 */
export function pacePlan(pace: Pace): PacePlan {
  return typeof pace === 'number' ? { ...byDay, days: pace } : paces[pace];
}
