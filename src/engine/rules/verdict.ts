import { heldDays } from '../hold/heldFrom.js';
import { brokenHolds } from './brokenHolds.js';
import { countedHolds, type CountedHold } from './countedHolds.js';
import { holdAnswer, type HoldAnswer } from './holdAnswer.js';
import { openHold } from './openHold.js';
import type { Treatment } from './treatment.js';
import { untestedIn } from './untestedIn.js';
import { daily, type Rule, type Found } from './rule.js';
import { verdictWords, type Verdict } from './verdictWords.js';

/**
 * Whether the fish have had their days: complete, running, not complete, or open because of a row; then the days held,
 * the breaks and the days lost, the stretches without a test.
 */
export const verdict: Rule<Verdict> = {
  about: 'whether the fish have had their days',
  codes: {
    verdict: ['verdict'],
    'verdict-days': ['verdict'],
    'verdict-breaks': ['verdict'],
    'verdict-untested': ['verdict'],
  },
  sources: ['Practice'],
  needs: [],
  yieldsTo: [],
  find,
  words: verdictWords,
  examples: [
    {
      log: daily('Cu', 2.25, 2.25),
      finds: ['verdict - verdict', 'verdict - verdict-days', 'verdict - verdict-breaks', 'verdict - verdict-untested'],
    },
  ],
};

function find(treatment: Treatment): readonly Found<Verdict>[] {
  const { card, terms, trace } = treatment;
  const holds = countedHolds(treatment);
  const answer = holdAnswer(trace, terms, card.days);
  const open = openHold(treatment);
  const openRow =
    open === null || open.row === null ? null : { row: open.row, ifBelow: open.ifBelow, ifHeld: open.ifHeld };
  return [
    {
      ...line({ code: 'verdict', answer, wanted: card.days, open: openRow, tested: trace.last !== null }),
      row: openRow?.row ?? null,
      when: openRow === null ? null : timeOf(treatment, openRow.row),
    },
    line(daysHeld(treatment, answer, holds)),
    line(breaks(treatment, holds)),
    line(untested(treatment)),
  ];
}

function line(body: Verdict): Found<Verdict> {
  return { ...body, severity: 'verdict', when: null, row: null, source: 'Practice' };
}

function timeOf({ log }: Treatment, row: number): number | null {
  return log.when[log.row.indexOf(row)] ?? null;
}

function daysHeld(
  { card, terms, trace }: Treatment,
  { kind, days }: HoldAnswer,
  holds: readonly CountedHold[],
): Verdict {
  const longest = holds.reduce((most, { hold }) => Math.max(most, heldDays(hold, terms.arrived)), 0);
  const last = holds[holds.length - 1];
  const shown = kind === 'not complete' ? holds.find(({ hold }) => heldDays(hold, terms.arrived) === longest) : last;
  const ends = shown === undefined ? { from: null, to: null } : { from: shown.from, to: shown.hold.to };
  const isCredited = kind === 'running' && trace.last !== null && last !== undefined;
  const credited = isCredited ? Math.max(0, days - heldDays(last.hold, terms.arrived)) : 0;
  return { code: 'verdict-days', kind, days, longest, wanted: card.days, ...ends, credited: credited * 24 };
}

function breaks(treatment: Treatment, holds: readonly CountedHold[]): Verdict {
  const broken = brokenHolds(treatment, holds);
  const lost = broken.reduce((sum, { counted }) => sum + heldDays(counted.hold, treatment.terms.arrived), 0);
  return { code: 'verdict-breaks', rows: broken.map(({ row }) => row), lost };
}

function untested(treatment: Treatment): Verdict {
  const stretches = untestedIn(treatment);
  const restarts = stretches.filter((stretch) => stretch.restarts !== null);
  return {
    code: 'verdict-untested',
    stretches: stretches.length,
    longest: stretches.reduce((most, { days }) => Math.max(most, days), 0) * 24,
    restarts: restarts.length,
    lost: restarts.reduce((sum, stretch) => sum + (stretch.restarts ?? 0), 0),
  };
}
