import * as limits from '../limits/limits.js';
import { secondDays } from '../units/quantity.js';
import { stoppedHold } from './stoppedHold.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { daysText, levelText } from './phrases.js';
import { shownNumber } from '../units/shown.js';
import type { Treatment } from './treatment.js';

interface StoppedShort {
  readonly code: 'stopped-short';
  readonly days: number;
  readonly wanted: number;
  /** The row says so, or the level shows it. */
  readonly said: boolean;
  readonly level: number | null;
}

/** Copper taken out before the hold was long enough: danger; short by under a day: warning. */
export const stoppedShort: Rule<StoppedShort> = {
  about: 'copper taken out before the hold was long enough',
  codes: { 'stopped-short': ['danger', 'warning'] },
  sources: ['Practice'],
  needs: [['copper']],
  yieldsTo: [],
  find,
  words,
  examples: [
    { log: daily('Cu|note', 2.25, 2.25, 2.25, '2.25|copper removed'), finds: ['danger 5 stopped-short'] },
    { log: daily('Cu|note', 2.25, 2.25, 2.25, 2.25), finds: [] },
  ],
};

function find(treatment: Treatment): readonly Found<StoppedShort>[] {
  const stopped = stoppedHold(treatment);
  if (stopped === null) return [];
  const { row, when, days, said, level } = stopped;
  const wanted = treatment.card.days;
  const isNearly = wanted - days < limits.nearlyHeld.value - secondDays;
  const severity = isNearly ? 'warning' : 'danger';
  return [{ code: 'stopped-short', severity, when, row, source: 'Practice', days, wanted, said, level }];
}

function words({ days, wanted, said, level }: StoppedShort): FindingWords {
  return {
    finding:
      `Copper was taken out after ${daysText(days)} of ${shownNumber(wanted)}` +
      `${said ? '' : `, the level fell to ${levelText(level ?? 0)} and did not come back`}: the treatment is not complete.`,
    why: 'Copper stops reinfection while it is held: what hatches after a short hold starts the disease again.',
  };
}
