import { limits } from '../limits/limits.js';
import { hoursPerDay, secondDays } from '../units/quantity.js';
import { deathRows, type DeathRow } from './deathRows.js';
import type { Finding } from './finding.js';
import type { Rule } from './rule.js';

const watchedDays = limits.deathHours.value / hoursPerDay;

/**
 * Three deaths, of one lot or of several, or a tenth of a lot, within 24 hours are a danger; any other death is noted.
 * Fish dead on arrival died of something else. What a danger has counted is not counted again.
 *
 * Source: [Practice].
 */
export const deaths: Rule = (treatment) => {
  /** Deaths of the last day that no danger has counted. */
  let recent: readonly DeathRow[] = [];
  return deathRows(treatment)
    .filter(({ count }) => count > 0)
    .map((row) => {
      recent = [...recent.filter(({ when }) => row.when - when <= watchedDays + secondDays), row];
      const ofLot = recent.filter(({ lot }) => lot === row.lot);
      const counted = isDanger(ofLot) ? ofLot : isMany(recent) ? recent : null;
      if (counted === null) return noteOf(row);
      recent = recent.filter((death) => !counted.includes(death));
      return dangerOf(counted, row);
    });
};

function isDanger(lately: readonly DeathRow[]): boolean {
  const last = lately[lately.length - 1];
  if (last === undefined || inTreatment([last]) === 0) return false;
  return (
    isMany(lately) || (last.cameAlive !== null && inTreatment(lately) >= last.cameAlive * limits.deathsOfLot.value)
  );
}

function isMany(lately: readonly DeathRow[]): boolean {
  const last = lately[lately.length - 1];
  return last !== undefined && inTreatment([last]) > 0 && inTreatment(lately) >= limits.deathsADay.value;
}

function inTreatment(rows: readonly DeathRow[]): number {
  return rows.reduce((sum, { count, onArrival }) => sum + count - onArrival, 0);
}

function dangerOf(lately: readonly DeathRow[], { when, row, lot, cameAlive }: DeathRow): Finding {
  const dying = lately.filter((death) => inTreatment([death]) > 0);
  const lots = new Set(dying.map((death) => death.lot)).size;
  const first = dying[0]?.when ?? when;
  const hours = (when - first) * hoursPerDay;
  const count = inTreatment(lately);
  const of = lots > 1 ? null : cameAlive;
  return { code: 'deaths', count, hours, lot, lots, of, severity: 'danger', when, row, source: 'Practice' };
}

function noteOf({ when, row, lot, count, onArrival }: DeathRow): Finding {
  return { code: 'death-noted', count, onArrival, lot, severity: 'note', when, row, source: 'Practice' };
}
