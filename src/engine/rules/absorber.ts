import { copperForms } from '../dose/forms.js';
import type { LevelSteps } from '../level/levelSteps.js';
import { lossEstimate } from '../level/lossEstimate.js';
import { limits } from '../limits/limits.js';
import { anyTextFits } from '../log/table/anyTextFits.js';
import { instantDays } from '../units/quantity.js';
import { holdReached } from './holdReached.js';
import { isDenied } from './isDenied.js';
import type { Rule } from './rule.js';
import { steadyLevels, type SteadyLevels } from './steady/steadyLevels.js';
import { fates } from './steady/steadyPass.js';
import type { Treatment } from './treatment.js';

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
export const absorber: Rule = (treatment, named) => {
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
};

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
