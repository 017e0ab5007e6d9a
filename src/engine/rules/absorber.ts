import { copperForms } from '../dose/forms.js';
import type { LevelSteps } from '../level/levelSteps.js';
import { lossEstimate } from '../level/lossEstimate.js';
import * as limits from '../limits/limits.js';
import { anyTextFits } from '../log/table/anyTextFits.js';
import { instantDays } from '../units/quantity.js';
import { holdReached } from './holdAnswer.js';
import { isDenied } from './isDenied.js';
import { steadyLevels, type SteadyLevels } from './steady/steadyLevels.js';
import { fates } from './steady/steadyPass.js';
import type { Treatment } from './treatment.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { percentText } from './phrases.js';
import { unmatchedChange } from './unmatchedChange.js';

interface Absorber {
  readonly code: 'absorber';
  readonly word: string;
  readonly lossPerDay: number;
  readonly usual: number;
}

const things =
  /\b(?:(?:live|dead|dry|lava)[- ]rocks?|rocks?(?! ?(?:beaut|hind|cod|goby|blenn|wrasse|flagtail))|coral (?:sand|rubble|skeletons?|gravel)|aragonite|crushed (?:coral|shells?)|(?:activated )?carbon|gac|resins?|calcareous(?: \w+)?|limestone|oyster shells?|zeolite|(?:bio[- ]?|ceramic |filter |new )?media|polymer pads?)\b/i;
const removed = /^\s*(?:is |was |are |were |has been |have been )?(?:out|removed|gone|taken out)\b/i;
const removing = /\b(?:remov\w+|took|taken|pulled)(?: out)?(?: the| all| some| of)*\s*$/i;

/**
 * Something noted that takes up copper, and the level falling faster from there on than the form's usual loss.
 *
 * Definition: loss fitted to the readings of the two weeks from the note, stray readings left out; its lower bound lies
 * above the form's usual loss. Notes once the days are held are left alone: carbon then takes the copper out.
 */
export const absorber: Rule<Absorber> = {
  about: 'something noted that takes up copper, and the level falling faster from there on',
  codes: { absorber: ['warning'] },
  sources: ['Practice'],
  needs: [['copper'], ['note']],
  yieldsTo: [...unmatchedChange.yieldsTo, unmatchedChange],
  find,
  words,
  examples: [
    {
      log: daily('Cu|note', 2.3, '2.3|added live rock', 2.2, 2.12, 2.04, 1.97, 1.9, 1.82, 1.75),
      finds: ['warning 3 absorber'],
    },
    { log: daily('Cu|note', 2.3, '2.3|added live rock', 2.3, 2.29, 2.3, 2.28, 2.29), finds: [] },
  ],
};

function find(treatment: Treatment, named: ReadonlySet<number>): readonly Found<Absorber>[] {
  const { log, card } = treatment;
  const notes = log.texts.note;
  const isNoted = anyTextFits(notes, (text) => things.test(text));
  const steady = isNoted ? steadyLevels(treatment) : null;
  if (notes === null || steady === null) return [];
  const reached = holdReached(treatment);
  const usual = card.form === null ? limits.lossAmine.value : copperForms[card.form].usualLossPerDay;
  for (let entry = 0; entry < log.count; entry++) {
    const text = notes[entry] ?? '';
    const when = log.when[entry] ?? NaN;
    if (text === '' || when >= reached) continue;
    const word = presentThing(text);
    const row = log.row[entry] ?? 0;
    if (word === null || named.has(row)) continue;
    const lossPerDay = fasterLoss(treatment, steady, when, usual);
    if (lossPerDay === null) continue;
    return [{ severity: 'warning', when, row, source: 'Practice', code: 'absorber', word, lossPerDay, usual }];
  }
  return [];
}

function words({ word, lossPerDay, usual }: Absorber): FindingWords {
  return {
    finding:
      `"${word}" is noted and the level falls by ${percentText(lossPerDay)} a day from here, against up to ${percentText(usual)} ` +
      `usual: take it out, and test before each dose.`,
    why: 'Rock, coral sand, calcareous media, carbon and resin take up copper, and give some of it back later.',
  };
}

/** What the note says is in the water, null where it says that it is not, or no longer. */
function presentThing(text: string): string | null {
  const match = things.exec(text);
  if (match === null) return null;
  const from = match.index;
  const to = from + match[0].length;
  const isRemoved = removed.test(text.slice(to)) || removing.test(text.slice(0, from));
  return isRemoved || isDenied(text, { from, to }) ? null : match[0];
}

/** Share lost in a day, where that is surely more than the usual. */
function fasterLoss({ levels, events }: Treatment, steady: SteadyLevels, from: number, usual: number): number | null {
  if (levels === null) return null;
  let first = 0;
  while (first < events.count && from - (events.when[first] ?? NaN) >= instantDays) first++;
  let last = first;
  while (last < events.count && (events.when[last] ?? NaN) - from <= limits.absorberDays.value) last++;
  const steps = slice(levels.path.steps, steady, first, last);
  const { rate, spread } = lossEstimate(steps, levels.path.course.drift);
  const usualRate = -Math.log1p(-usual);
  return spread > 0 && rate - limits.absorberSure.value * spread > usualRate ? -Math.expm1(-rate) : null;
}

function slice(steps: LevelSteps, { fate }: SteadyLevels, from: number, to: number): LevelSteps {
  const read = steps.read.slice(from, to);
  let readings = 0;
  for (let index = from; index < to; index++) {
    if (fate[index] === fates.fits || fate[index] === fates.jump) readings++;
    else read[index - from] = NaN;
  }
  return {
    ...steps,
    count: to - from,
    readings,
    read,
    elapsed: steps.elapsed.subarray(from, to),
    share: steps.share.subarray(from, to),
    added: steps.added.subarray(from, to),
    thickBefore: steps.thickBefore.subarray(from, to),
    thickAfter: steps.thickAfter.subarray(from, to),
    volume: steps.volume.subarray(from, to),
    noise: steps.noise.subarray(from, to),
  };
}
