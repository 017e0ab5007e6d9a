import { levelAfter } from '../level/levelAfter.js';
import { bandSpreads } from '../level/levelSteps.js';
import * as limits from '../limits/limits.js';
import type { RowFault } from '../log/table/log.js';
import { instantDays } from '../units/quantity.js';
import { dosedBeforeNextTest } from './steady/nextReading.js';
import { slipMeanings, type SlipMeaning } from './steady/slipMeanings.js';
import { steadyLevels } from './steady/steadyLevels.js';
import { steadyModel } from './steady/steadyModel.js';
import { fates } from './steady/steadyPass.js';
import type { Treatment } from './treatment.js';
import { daily, type Rule, type Found, type FindingWords, type FindingAt } from './rule.js';
import { nearLevelText } from './phrases.js';
import { swappedRows } from './swappedRows.js';

interface UnitSlip extends Slip {
  readonly code: 'unit-slip';
}

/** Standard deviation of what is rounded away of a reading written to 0.01. [mg/L] */
const rounding = 0.01 / Math.sqrt(12);

/**
 * A reading that is another number miswritten: in the other unit, with its point lost or moved, with digits swapped.
 * A danger once something was dosed on it.
 *
 * Definition: the reading lies outside the gate of `steadyPass`, the ones after it agree with the ones before it, and
 * one of its `slipMeanings` lies within 3.5 standard deviations of what was expected; the nearest is named. A number
 * that is no reading, over 20 mg/L or with three digits after a comma, is judged the same way by the level at its time.
 */
export const unitSlip: Rule<UnitSlip> = {
  about: 'a number miswritten: in the other unit, with its point lost or moved, with digits swapped',
  codes: { 'unit-slip': ['danger', 'warning'] },
  sources: ['Practice'],
  needs: [['copper']],
  yieldsTo: [swappedRows],
  find,
  words,
  examples: [
    { log: daily('Cu', 2.25, 2.25, 22.5, 2.25, 2.25), finds: ['warning 4 unit-slip'] },
    { log: daily('Cu', 2.25, 2.25, 2.3, 2.25, 2.25), finds: [] },
  ],
};

function find(treatment: Treatment, named: ReadonlySet<number>): readonly Found<UnitSlip>[] {
  return [...strayReadings(treatment, named), ...unreadableNumbers(treatment)];
}

function words({ cause, written, meant, expected, dosed }: UnitSlip): FindingWords {
  return {
    finding:
      `${nearLevelText(written)} is written where about ${nearLevelText(expected)} is expected; ${slipped[cause]} it is ${nearLevelText(meant)}: ` +
      `${dosed ? 'copper was dosed on it, test before anything else' : 'correct the cell, or set it aside as "void"'}.`,
    why: 'One reading far off between readings that agree is more often a slip of the pen than a change in the water.',
  };
}

const slipped: Readonly<Record<SlipMeaning['cause'], string>> = {
  micrograms: 'read as ug/L',
  milligrams: 'read as mg/L',
  'point lost': 'with its decimal point back',
  'point moved': 'with its decimal point moved back',
  'digits swapped': 'with two digits swapped back',
};

function strayReadings(treatment: Treatment, named: ReadonlySet<number>): Found<UnitSlip>[] {
  const steady = steadyLevels(treatment);
  if (steady === null || steady.allFit) return [];
  const { events } = treatment;
  const found: Found<UnitSlip>[] = [];
  for (let index = 0; index < events.count; index++) {
    const fate = steady.fate[index];
    if ((fate !== fates.stray && fate !== fates.last) || named.has(events.row[index] ?? 0)) continue;
    const written = events.amount[index] ?? NaN;
    const expected = steady.predicted[index] ?? NaN;
    const meaning = nearestMeaning(written, expected, steady.spread[index] ?? NaN);
    if (meaning === null) continue;
    const at = { when: events.when[index] ?? NaN, row: events.row[index] ?? 0 };
    found.push(slip(at, { ...meaning, written, expected, dosed: dosedBeforeNextTest(events, index) }));
  }
  return found;
}

/** Numbers that are no readings, by the level before and after them. */
function unreadableNumbers(treatment: Treatment): Found<UnitSlip>[] {
  const { faults } = treatment.log;
  return faults.length === 0 ? [] : faults.flatMap((fault) => unreadable(fault, treatment) ?? []);
}

function unreadable({ problem, row, when }: RowFault, treatment: Treatment): Found<UnitSlip> | null {
  if (problem.code !== 'reading-too-high' && problem.code !== 'three-digits-after-comma') return null;
  const digits = /\d+(?:[.,]\d+)?/.exec(problem.given)?.[0];
  const steady = steadyModel(treatment);
  if (digits === undefined || steady === null) return null;
  const { events, model } = steady;
  let before = events.count - 1;
  while (before >= 0 && isLater(events.when[before] ?? NaN, events.row[before] ?? 0, when, row)) before--;
  if (before < 0) return null;
  const { expected, high } = levelAfter(model.path, before, Math.max(0, when - (events.when[before] ?? NaN)));
  const error = Math.sqrt(model.path.steps.noise.find((each) => each === each) ?? 0);
  const spread = Math.hypot((high - expected) / bandSpreads, error);
  const written = Number(digits.replace(',', '.'));
  const meaning = nearestMeaning(written, expected, spread);
  if (meaning === null) return null;
  return slip({ when, row }, { ...meaning, written, expected, dosed: dosedBeforeNextTest(events, before) });
}

/** Of the same row, what stands in it beside the reading comes after that. */
function isLater(eventWhen: number, eventRow: number, when: number, row: number): boolean {
  return eventWhen - when >= instantDays || (Math.abs(eventWhen - when) < instantDays && eventRow >= row);
}

function nearestMeaning(written: number, expected: number, spread: number): SlipMeaning | null {
  let nearest: SlipMeaning | null = null;
  let least = limits.slipFits.value;
  for (const meaning of slipMeanings(written)) {
    // Of 2.25 a tenth is 0.23 once it is rounded, and ten times that is off by what was rounded away.
    const rounded =
      meaning.cause === 'point moved' && meaning.meant > written ? rounding * (meaning.meant / written) : 0;
    if (meaning.cause === 'digits swapped' && !isMuchNearer(meaning.meant, { written, expected })) continue;
    const allowed = meaning.cause === 'digits swapped' ? spread : Math.max(spread, limits.slipSpread.value * expected);
    const off = Math.abs(meaning.meant - expected) / Math.hypot(allowed, Math.min(rounded, 10 * rounding));
    if (off < least) [nearest, least] = [meaning, off];
  }
  return nearest;
}

function isMuchNearer(meant: number, { written, expected }: Pick<Slip, 'written' | 'expected'>): boolean {
  return Math.abs(meant - expected) <= limits.digitsNearer.value * Math.abs(written - expected);
}

interface Slip extends SlipMeaning {
  readonly written: number;
  readonly expected: number;
  readonly dosed: boolean;
}

function slip(at: Pick<FindingAt, 'when' | 'row'>, body: Slip): Found<UnitSlip> {
  return { severity: body.dosed ? 'danger' : 'warning', ...at, source: 'Practice', code: 'unit-slip', ...body };
}
