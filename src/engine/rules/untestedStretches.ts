import { notedGapDays } from '../hold/holdTerms.js';
import { limits } from '../limits/limits.js';
import { hoursPerDay, secondDays } from '../units/quantity.js';
import { countedHolds } from './countedHolds.js';
import type { Finding } from './finding.js';
import type { Rule } from './rule.js';
import { stoppedHold } from './stoppedHold.js';
import type { Treatment } from './treatment.js';
import { untestedIn, type Stretch } from './untestedIn.js';

const warnedGapDays = limits.warnedGap.value / hoursPerDay;

/**
 * Stretches of a hold without a test: over 36 h one note for all, from 72 h a warning each, and beyond the longest gap
 * the hold starts anew.
 */
export const untestedStretches: Rule = (treatment) => {
  const found: Finding[] = [];
  const noted: Stretch[] = [];
  const open = openStretch(treatment);
  for (const stretch of [...untestedIn(treatment), ...(open === null ? [] : [open])]) {
    if (stretch.restarts !== null) found.push(restarted(stretch, stretch.restarts, treatment));
    else if (stretch.days >= warnedGapDays - secondDays || stretch.days > longest(treatment))
      found.push(warned(stretch));
    else noted.push(stretch);
  }
  return noted.length === 0 ? found : [...found, note(noted)];
};

function longest({ terms }: Treatment): number {
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

function restarted({ days, row, when }: Stretch, lost: number, { terms }: Treatment): Finding {
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

function warned({ days, row, when, isOpen }: Stretch): Finding {
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

function note(stretches: readonly Stretch[]): Finding {
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
