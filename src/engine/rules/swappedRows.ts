import * as limits from '../limits/limits.js';
import { dosedBeforeNextTest, nextReading } from './steady/nextReading.js';
import { steadyLevels, type SteadyLevels } from './steady/steadyLevels.js';
import type { Treatment } from './treatment.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { nearLevelText } from './phrases.js';

interface SwappedRows {
  readonly code: 'swapped-rows';
  readonly written: number;
  readonly expected: number;
  /** The reading in the other row. */
  readonly other: { readonly row: number; readonly level: number };
  readonly dosed: boolean;
}

/**
 * Two readings in a row that were entered in each other's row. A danger once something was dosed on one of them.
 *
 * Definition: each is what was expected of the other, and swapped the two are e¹⁰ times as likely,
 * 2·(first − second)·(expected second − expected first) ÷ spread² ≥ 20. A finding for either row.
 */
export const swappedRows: Rule<SwappedRows> = {
  about: "two readings in a row that were entered in each other's row",
  codes: { 'swapped-rows': ['danger', 'warning'] },
  sources: ['Practice'],
  needs: [['copper'], ['dose']],
  yieldsTo: [],
  find,
  words,
  examples: [
    {
      log: daily('Cu|dose', '0|11.2', '1.12|11.2', '0.56|11.3', '1.68|11.3', '2.25|', '2.25|'),
      finds: ['danger 3 swapped-rows', 'danger 4 swapped-rows'],
    },
    { log: daily('Cu|dose', '0|11.2', '0.56|11.2', '1.12|11.3', '1.68|11.3', '2.25|', '2.25|'), finds: [] },
  ],
};

function find(treatment: Treatment): readonly Found<SwappedRows>[] {
  const steady = steadyLevels(treatment);
  if (steady === null) return [];
  const found: Found<SwappedRows>[] = [];
  const { events } = treatment;
  for (let index = 0; index < events.count; index++) {
    if (!(Math.abs(steady.off[index] ?? NaN) > limits.swapLooked.value)) continue;
    const next = nextReading(events, index);
    const then = next < 0 ? NaN : expectedThen(treatment, steady, index, next);
    if (!isSwapped(treatment, steady, { index, next, then })) continue;
    found.push(...either(treatment, { index, next, expected: steady.predicted[index] ?? NaN, then }));
    index = next;
  }
  return found;
}

function words({ written, expected, other, dosed }: SwappedRows): FindingWords {
  return {
    finding:
      `${nearLevelText(written)} here and ${nearLevelText(other.level)} in row ${other.row} each fit the other's place ` +
      `(${nearLevelText(expected)} is expected here): ${dosed ? 'copper was dosed on it, test now' : 'swap them back if so'}.`,
    why: "Two readings far off that agree once they are swapped were entered in each other's row.",
  };
}

/** What was expected of the next reading, had this one not been read. */
function expectedThen({ levels }: Treatment, steady: SteadyLevels, index: number, next: number): number {
  if (levels === null) return NaN;
  const { share, added, elapsed } = levels.path.steps;
  let level = steady.predicted[index] ?? NaN;
  for (let at = index + 1; at <= next; at++) {
    level = level * (share[at] ?? NaN) * Math.exp(-steady.rate * (elapsed[at] ?? NaN)) + (added[at] ?? NaN);
  }
  return level;
}

interface Pair {
  readonly index: number;
  readonly next: number;
  readonly then: number;
}

function isSwapped({ events }: Treatment, steady: SteadyLevels, { index, next, then }: Pair): boolean {
  const spread = steady.spread[index] ?? NaN;
  const expected = steady.predicted[index] ?? NaN;
  const first = events.amount[index] ?? NaN;
  const second = events.amount[next] ?? NaN;
  const likelier = (2 * (first - second) * (then - expected)) / (spread * spread);
  return (
    likelier >= limits.swapLikelier.value &&
    Math.abs(second - expected) < limits.swapFits.value * spread &&
    Math.abs(first - then) < limits.swapOtherFits.value * spread
  );
}

function either(
  { events }: Treatment,
  { index, next, expected, then }: Pair & { readonly expected: number },
): Found<SwappedRows>[] {
  const dosed = dosedBeforeNextTest(events, index) || dosedBeforeNextTest(events, next);
  const finding = (at: number, other: number, of: number): Found<SwappedRows> => ({
    severity: dosed ? 'danger' : 'warning',
    when: events.when[at] ?? NaN,
    row: events.row[at] ?? 0,
    source: 'Practice',
    code: 'swapped-rows',
    written: events.amount[at] ?? NaN,
    expected: of,
    other: { row: events.row[other] ?? 0, level: events.amount[other] ?? NaN },
    dosed,
  });
  return [finding(index, next, expected), finding(next, index, then)];
}
