import * as limits from '../limits/limits.js';
import { hoursPerDay, secondDays } from '../units/quantity.js';
import { deathRows, type DeathRow } from './deathRows.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { rounded, cut, capital, cardinal, ordinal } from './phrases.js';
import type { Treatment } from './treatment.js';

type Death =
  | {
      readonly code: 'deaths';
      readonly count: number;
      readonly hours: number;
      /** '' where the log has no lots. */
      readonly lot: string;
      /** They were of so many lots. */
      readonly lots: number;
      /** How many of the lot were alive in the system at arrival; null: not known. */
      readonly of: number | null;
    }
  | { readonly code: 'death-noted'; readonly count: number; readonly onArrival: number; readonly lot: string };

const many = `${cardinal(limits.deathsADay.value)} deaths, or a ${ordinal(1 / limits.deathsOfLot.value)} of a lot,`;

const watchedDays = limits.deathHours.value / hoursPerDay;

/**
 * Three deaths, of one lot or of several, or a tenth of a lot, within 24 hours are a danger; any other death is noted.
 * Fish dead on arrival died of something else. What a danger has counted is not counted again.
 *
 * Source: [Practice].
 */
export const deaths: Rule<Death> = {
  about: `${many} within ${limits.deathHours.value} hours; any other death is noted`,
  codes: { deaths: ['danger'], 'death-noted': ['note'] },
  sources: ['Practice'],
  needs: [['dead', 'fish out', 'note', 'signs']],
  yieldsTo: [],
  find,
  words,
  examples: [
    { log: daily('Cu|dead', 2.25, '2.25|1', 2.25, '2.25|3'), finds: ['note 3 death-noted', 'danger 5 deaths'] },
    { log: daily('Cu|note', 2.25, '2.25|three anthias dead'), finds: ['danger 3 deaths'] },
    { log: daily('Cu|dead', 2.25, '2.25|0'), finds: [] },
  ],
};

function find(treatment: Treatment): readonly Found<Death>[] {
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
}

function words(finding: Death): FindingWords {
  return finding.code === 'deaths' ? wordsOfMany(finding) : wordsOfOne(finding);
}

type Of<C extends Death['code']> = Extract<Death, { readonly code: C }>;

function wordsOfMany({ count, hours, lot, lots, of }: Of<'deaths'>): FindingWords {
  return {
    finding:
      `${fish(count)}${lots > 1 ? ` of ${lots} lots` : ofLot(lot)} died ${hours < 0.05 ? 'in one entry' : `within ${rounded(hours, 1)} h`}` +
      `${of === null ? '' : `, ${rounded((100 * count) / of, 1)} % of ${of}`}: test ammonia, oxygen and copper now, ` +
      `and call an aquatic veterinarian.`,
    why: `${capital(many)} within ${limits.deathHours.value} hours point to the water or to a disease that copper does not treat.`,
  };
}

function wordsOfOne({ count, onArrival, lot }: Of<'death-noted'>): FindingWords {
  return {
    finding:
      onArrival >= count
        ? `${fish(count)}${ofLot(lot)} dead on arrival: kept apart from the deaths in treatment.`
        : `${fish(count)}${ofLot(lot)} died: test ammonia, oxygen and copper, and look at the others.`,
    why: 'Fish die inside the band too: every death is counted, see QT.DEATHS.',
  };
}

function fish(count: number): string {
  return count === 1 ? '1 fish' : `${count} fish`;
}

function ofLot(lot: string): string {
  return lot === '' ? '' : ` of lot ${cut(lot)}`;
}

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

function dangerOf(lately: readonly DeathRow[], { when, row, lot, cameAlive }: DeathRow): Found<Death> {
  const dying = lately.filter((death) => inTreatment([death]) > 0);
  const lots = new Set(dying.map((death) => death.lot)).size;
  const first = dying[0]?.when ?? when;
  const hours = (when - first) * hoursPerDay;
  const count = inTreatment(lately);
  const of = lots > 1 ? null : cameAlive;
  return { code: 'deaths', count, hours, lot, lots, of, severity: 'danger', when, row, source: 'Practice' };
}

function noteOf({ when, row, lot, count, onArrival }: DeathRow): Found<Death> {
  return { code: 'death-noted', count, onArrival, lot, severity: 'note', when, row, source: 'Practice' };
}
