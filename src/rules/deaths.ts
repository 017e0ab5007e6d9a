import { hoursPerDay, instantDays } from '../units/quantity.js';
import { deathRows, type DeathRow } from './deathRows.js';
import type { Finding } from './finding.js';
import type { Rule } from './rule.js';

/** So many in a day, or this share of a lot, and something is wrong that counting days does not mend. [Practice] */
const mostADay = 3;
const mostOfLot = 0.1;
const watchedDays = 1;

/**
 * Three deaths, or a tenth of a lot, within 24 hours are a danger; any other death is noted. Fish dead on arrival died of
 * something else.
 *
 * Source: [Practice].
 */
export const deaths: Rule = (treatment) => {
  /** Deaths of the last day that no finding has named, by lot. */
  const recent = new Map<string, DeathRow[]>();
  return deathRows(treatment)
    .filter(({ count }) => count > 0)
    .map((row) => {
      const before = recent.get(row.lot) ?? [];
      const lately = [...before.filter(({ when }) => row.when - when < watchedDays - instantDays), row];
      const danger = isDanger(lately);
      recent.set(row.lot, danger ? [] : lately);
      return danger ? dangerOf(lately, row) : noteOf(row);
    });
};

function isDanger(lately: readonly DeathRow[]): boolean {
  const last = lately[lately.length - 1];
  if (last === undefined || inTreatment([last]) === 0) return false;
  const sum = inTreatment(lately);
  return sum >= mostADay || (last.cameAlive !== null && sum >= last.cameAlive * mostOfLot);
}

function inTreatment(rows: readonly DeathRow[]): number {
  return rows.reduce((sum, { count, onArrival }) => sum + count - onArrival, 0);
}

function dangerOf(lately: readonly DeathRow[], { when, row, lot, cameAlive }: DeathRow): Finding {
  const first = lately.find((death) => inTreatment([death]) > 0)?.when ?? when;
  const hours = (when - first) * hoursPerDay;
  const count = inTreatment(lately);
  return { code: 'deaths', count, hours, lot, of: cameAlive, severity: 'danger', when, row, source: 'Practice' };
}

function noteOf({ when, row, lot, count, onArrival }: DeathRow): Finding {
  return { code: 'death-noted', count, onArrival, lot, severity: 'note', when, row, source: 'Practice' };
}
