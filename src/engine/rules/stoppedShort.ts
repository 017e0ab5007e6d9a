import { limits } from '../limits/limits.js';
import { secondDays } from '../units/quantity.js';
import type { Rule } from './rule.js';
import { stoppedHold } from './stoppedHold.js';

/** Copper taken out before the hold was long enough: danger; short by under a day: warning. */
export const stoppedShort: Rule = (treatment) => {
  const stopped = stoppedHold(treatment);
  if (stopped === null) return [];
  const { row, when, days, said, level } = stopped;
  const wanted = treatment.card.days;
  const isNearly = wanted - days < limits.nearlyHeld.value - secondDays;
  const severity = isNearly ? 'warning' : 'danger';
  return [{ code: 'stopped-short', severity, when, row, source: 'Practice', days, wanted, said, level }];
};
