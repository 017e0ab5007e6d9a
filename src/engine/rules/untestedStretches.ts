import { notedGapDays } from '../hold/holdTerms.js';
import * as limits from '../limits/limits.js';
import { hoursPerDay, secondDays } from '../units/quantity.js';
import { countedHolds } from './countedHolds.js';
import { stoppedHold } from './stoppedHold.js';
import type { Treatment } from './treatment.js';
import { untestedIn, type Stretch } from './untestedIn.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { daysText, rowsText } from './phrases.js';
import { shownNumber } from '../units/shown.js';

type Untested =
  | { readonly code: 'untested-stretch'; readonly hours: number; readonly open: boolean }
  | {
      readonly code: 'untested-noted';
      /** Of the tests that ended them. */
      readonly rows: readonly number[];
      readonly longest: number;
      /** The row since which nothing was tested, where the last one has not ended. */
      readonly openSince: number | null;
    }
  | {
      readonly code: 'restarted-untested';
      readonly hours: number;
      readonly longestGap: number;
      readonly days: number;
    };

const warnedGapDays = limits.warnedGap.value / hoursPerDay;

/**
 * Stretches of a hold without a test: over 36 h one note for all, from 72 h a warning each, and beyond the longest gap
 * the hold starts again.
 */
export const untestedStretches: Rule<Untested> = {
  about: 'stretches of a hold without a test',
  codes: { 'untested-stretch': ['warning'], 'untested-noted': ['note'], 'restarted-untested': ['warning'] },
  sources: ['Practice'],
  needs: [['copper']],
  yieldsTo: [],
  find,
  words,
  examples: [
    { log: daily('Cu', 2.25, '', 2.25), finds: ['note 4 untested-noted'] },
    { log: daily('Cu', 2.25, '', '', 2.25), finds: ['warning 5 untested-stretch'] },
    { log: daily('Cu', 2.25, 2.25, '', '', '', '', 2.25), finds: ['warning 8 restarted-untested'] },
    { log: daily('Cu', 2.25, 2.25, 2.25), finds: [] },
  ],
};

function find(treatment: Treatment): readonly Found<Untested>[] {
  const found: Found<Untested>[] = [];
  const noted: Stretch[] = [];
  const open = openStretch(treatment);
  for (const stretch of [...untestedIn(treatment), ...(open === null ? [] : [open])]) {
    if (stretch.restarts !== null) found.push(restarted(stretch, stretch.restarts, treatment));
    else if (stretch.days >= warnedGapDays - secondDays || stretch.days > longestGap(treatment))
      found.push(warned(stretch));
    else noted.push(stretch);
  }
  return noted.length === 0 ? found : [...found, note(noted)];
}

function words(finding: Untested): FindingWords {
  switch (finding.code) {
    case 'untested-stretch': {
      const hours = `No test for ${finding.hours.toFixed(1)} h`;
      return {
        finding: finding.open ? `${hours} since this one: test now.` : `${hours} before this one: test daily.`,
        why: `An untested stretch is not a dip, but it is not proof either: ${limits.warnedGap.value} h are warned of.`,
      };
    }
    case 'untested-noted':
      return { finding: wordsOfNoted(finding), why: 'Test daily, twice a day while raising.' };
    case 'restarted-untested': {
      const { hours, longestGap, days } = finding;
      return {
        finding:
          `No test for ${hours.toFixed(1)} h, longer than ${shownNumber(longestGap)} h: the hold starts again here, ` +
          `${daysText(days)} lost.`,
        why: 'Beyond the longest gap nobody knows that the level held; a longest gap of "none" on the card switches this off.',
      };
    }
  }
}

function wordsOfNoted({ rows, longest, openSince }: Extract<Untested, { code: 'untested-noted' }>): string {
  const hours = `${longest.toFixed(1)} h.`;
  const since = `o test since row ${openSince ?? 0}`;
  if (rows.length === 0) return `N${since}, for ${hours}`;
  const stretches = rows.length === 1 ? 'A stretch' : `${rows.length} stretches`;
  return (
    `${stretches} of ${limits.notedGap.value} to ${limits.warnedGap.value} h without a test before ${rowsText(rows)}` +
    `${openSince === null ? '' : `, n${since}`}, the longest ${hours}`
  );
}

function longestGap({ terms }: Treatment): number {
  return terms.longestGap + secondDays;
}

/** From the last test to now, where the hold still runs. */
function openStretch(treatment: Treatment): Stretch | null {
  const { trace, now, isAsked } = treatment;
  const { last, running } = trace;
  if (!isAsked || last === null || running === null || now - last.when <= notedGapDays + secondDays) return null;
  const counted = countedHolds(treatment).find(({ hold }) => hold === running);
  if (counted === undefined || counted.isEnough || stoppedHold(treatment) !== null) return null;
  return { days: now - last.when, row: last.row, when: last.when, isOpen: true, restarts: null };
}

function restarted({ days, row, when }: Stretch, lost: number, { terms }: Treatment): Found<Untested> {
  return {
    code: 'restarted-untested',
    severity: 'warning',
    when,
    row,
    source: 'Practice',
    hours: days * hoursPerDay,
    longestGap: terms.longestGap * hoursPerDay,
    days: lost,
  };
}

function warned({ days, row, when, isOpen }: Stretch): Found<Untested> {
  return {
    code: 'untested-stretch',
    severity: 'warning',
    when,
    row,
    source: 'Practice',
    hours: days * hoursPerDay,
    open: isOpen,
  };
}

function note(stretches: readonly Stretch[]): Found<Untested> {
  return {
    code: 'untested-noted',
    severity: 'note',
    when: stretches[0]?.when ?? null,
    row: stretches[0]?.row ?? null,
    source: 'Practice',
    rows: stretches.filter(({ isOpen }) => !isOpen).map(({ row }) => row),
    openSince: stretches.find(({ isOpen }) => isOpen)?.row ?? null,
    longest: Math.max(...stretches.map(({ days }) => days)) * hoursPerDay,
  };
}
