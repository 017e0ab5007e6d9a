import { lossEstimate } from '../../../src/engine/level/lossEstimate.js';
import { lowestBetweenReadings } from '../../../src/engine/level/lowestBetweenReadings.js';
import { aboveBand } from '../../../src/engine/rules/aboveBand.js';
import { carriedShare } from '../../../src/engine/rules/steady/carriedShare.js';
import { steadyLevels, type SteadyLevels } from '../../../src/engine/rules/steady/steadyLevels.js';
import { topOffCopper } from '../../../src/engine/rules/steady/topOffCopper.js';
import type { Treatment } from '../../../src/engine/rules/treatment.js';
import { atDay, atHour, audited, chelated, findingOf, log, rowsDaily, treated, type Edges, type Row } from './edge.js';

const steadyOf = (treatment: Treatment): SteadyLevels => {
  const steady = steadyLevels(treatment);
  if (steady === null) throw new Error('no model');
  return steady;
};
const at = (column: Float64Array, index: number): number => column[index] ?? NaN;

/** Readings of a hold with one of them written otherwise, the fifth. */
const oneOff = (usual: number, written: number, card = chelated): Treatment =>
  treated(log('Cu', ...rowsDaily(0, 3, usual), [atDay(4), written], ...rowsDaily(5, 7, usual)), card);
const offOf = (treatment: Treatment, index = 4): number => Math.abs(at(steadyOf(treatment).off, index));
const isFound = (treatment: Treatment, ...codes: Parameters<typeof audited>[1][]): boolean =>
  audited(treatment, ...codes) !== '';

const coarse = chelated.replace('accuracy|0.05', 'accuracy|0.2');
const fine = chelated.replace('accuracy|0.05', 'accuracy|0.01');
/** How far a slip's meaning lies from what was expected, in the units that decide. */
const meantOff = (treatment: Treatment, meant: number, per: (steady: SteadyLevels) => number): number => {
  const steady = steadyOf(treatment);
  return Math.abs(meant - at(steady.predicted, 4)) / per(steady);
};

/** A raise in which two readings in a row stand in each other's place, with the doses between. */
const swapped = (dose: number, first: number, second: number, base = 1): Treatment =>
  treated(
    log(
      'Cu|dose',
      ...rowsDaily(0, 5, base, ''),
      [atDay(6), first, dose],
      [atDay(7), second, ''],
      ...rowsDaily(8, 11, base + dose * 0.05, ''),
    ),
  );
/** What the two readings and what was expected of them are, where the first has the spread given. */
const pairOf = (
  treatment: Treatment,
): { first: number; second: number; expected: number; then: number; spread: number } => {
  const { events, levels } = treatment;
  const steady = steadyOf(treatment);
  if (levels === null) throw new Error('no model');
  const { share, added, elapsed } = levels.path.steps;
  const expected = at(steady.predicted, 6);
  let then = expected;
  for (let index = 7; index <= 8; index++)
    then = then * at(share, index) * Math.exp(-steady.rate * at(elapsed, index)) + at(added, index);
  return { first: at(events.amount, 6), second: at(events.amount, 8), expected, then, spread: at(steady.spread, 6) };
};
const likelier = (treatment: Treatment): number => {
  const { first, second, expected, then, spread } = pairOf(treatment);
  return (2 * (first - second) * (then - expected)) / spread ** 2;
};
const thenOff = (treatment: Treatment): number => {
  const { first, then, spread } = pairOf(treatment);
  return Math.abs(first - then) / spread;
};

/** A change of water in the row of a reading of 2.25 mg/L, and what is read a day later. */
const changed = (litres: number, next: number, note = '', day = 6): Treatment =>
  treated(
    log(
      'Cu|WC L|dose|note',
      ...rowsDaily(0, day - 1, 2.25, '', '', ''),
      [atDay(day), 2.25, litres, '', note],
      ...rowsDaily(day + 1, day + 3, next, '', '', ''),
    ),
  );
/** A change whose row also doses, so that two tests show nothing. */
const dipped = (litres: number): Treatment =>
  treated(
    log(
      'Cu|WC L|dose',
      ...rowsDaily(0, 5, 1.96, '', ''),
      [atHour(132), '', litres, (1.96 * litres) / 10],
      ...rowsDaily(6, 9, 1.96, '', ''),
    ),
  );
/** Top-offs a day, after which the level rises by so much a day; a dose is in the log. */
const toppedOff = (rise: number, count = 12, litres = 1, card = chelated): Treatment =>
  treated(
    log(
      'Cu|ATO L|dose',
      [atDay(0), 1.9, '', 2],
      ...Array.from({ length: 14 }, (_, day): Row => [
        atDay(day + 1),
        2 + rise * Math.min(day, count),
        day < count ? litres : '',
        '',
      ]),
    ),
    card,
  );
const topOff = (treatment: Treatment): { level: number; spread: number } => {
  const first = [...treatment.events.kind].findIndex(
    (kind, index) => kind === 0 && at(treatment.events.amount, index) >= 1.95,
  );
  return topOffCopper(treatment, steadyOf(treatment), first);
};
/** A loss of so much a day from the first row on, where rock is noted. */
const losing = (share: number): Treatment =>
  treated(
    log(
      'Cu|note',
      ...Array.from({ length: 8 }, (_, day): Row => [
        atDay(day),
        2.5 * (1 - share) ** day,
        day === 0 ? 'added live rock' : '',
      ]),
    ),
  );

export const oddsEdges: Edges<
  | 'gate'
  | 'strayOff'
  | 'slipFits'
  | 'digitsNearer'
  | 'slipSpread'
  | 'swapFits'
  | 'swapOtherFits'
  | 'swapLikelier'
  | 'swapLooked'
  | 'otherBand'
  | 'dipOfError'
  | 'smallestFall'
  | 'levelToKeep'
  | 'madeUp'
  | 'matchedApart'
  | 'matchedDenied'
  | 'loweringChanges'
  | 'absorberDays'
  | 'absorberSure'
  | 'topOffSure'
  | 'topOffPart'
  | 'topOffs'
> = {
  gate: [
    {
      where: 'AUDIT, a reading that nothing explains',
      answer: (value) => isFound(oneOff(2.25, 2.25 - value), 'unexplained-reading'),
      between: [0.02, 0.5],
      measured: (value) => offOf(oneOff(2.25, 2.25 - value)),
    },
  ],
  strayOff: [
    {
      where: 'AUDIT, a reading above the band in a row that is named',
      answer: (value) => aboveBand.find(oneOff(2.54, 2.54 + value), new Set([6])).length > 0,
      between: [0.065, 0.5],
      measured: (value) => offOf(oneOff(2.54, 2.54 + value)),
    },
  ],
  slipFits: [
    {
      where: 'AUDIT',
      answer: (value) => isFound(oneOff(1.2, 12 + 10 * value, coarse), 'unit-slip'),
      between: [0, 0.7],
      measured: (value) => meantOff(oneOff(1.2, 12 + 10 * value, coarse), 1.2 + value, ({ spread }) => at(spread, 4)),
    },
  ],
  slipSpread: [
    {
      where: 'AUDIT',
      answer: (value) => isFound(oneOff(1.2, 12 + 10 * value, fine), 'unit-slip'),
      between: [0, 0.7],
      measured: (value) =>
        meantOff(oneOff(1.2, 12 + 10 * value, fine), 1.2 + value, ({ predicted }) => at(predicted, 4)) / 3.5,
    },
  ],
  digitsNearer: [
    {
      where: 'AUDIT',
      answer: (value) => isFound(oneOff(value, 2.52), 'unit-slip'),
      between: [2.25, 2.36],
      measured: (value) => meantOff(oneOff(value, 2.52), 2.25, ({ predicted }) => Math.abs(2.52 - at(predicted, 4))),
    },
  ],
  swapFits: [
    {
      where: 'AUDIT',
      answer: (value) => isFound(swapped(10, 1.5, 1 + value), 'swapped-rows'),
      between: [0, 0.4],
      measured: (value) => {
        const treatment = swapped(10, 1.5, 1 + value);
        const steady = steadyOf(treatment);
        return (1 + value - at(steady.predicted, 6)) / at(steady.spread, 6);
      },
    },
  ],
  swapOtherFits: [
    {
      where: 'AUDIT',
      answer: (value) => isFound(swapped(10, 1.5 + value, 1), 'swapped-rows'),
      between: [0, 0.4],
      measured: (value) => thenOff(swapped(10, 1.5 + value, 1)),
    },
  ],
  swapLikelier: [
    {
      where: 'AUDIT',
      answer: (value) => isFound(swapped(value, 1 + value * 0.05, 1), 'swapped-rows'),
      between: [0.8, 8],
      measured: (value) => likelier(swapped(value, 1 + value * 0.05, 1)),
    },
  ],
  swapLooked: [
    {
      where: 'AUDIT',
      answer: (value) => isFound(swapped(3.7, 1 + value, 0.96), 'swapped-rows'),
      between: [0.02, 0.1],
      measured: (value) => offOf(swapped(3.7, 1 + value, 0.96), 6),
    },
  ],
  otherBand: [
    {
      where: 'AUDIT',
      answer: (value) => isFound(oneOff(2.25, 0.55 + value), 'swapped-systems'),
      between: [0.001, 0.3],
      measured: (value) => value / at(steadyOf(oneOff(2.25, 0.55 + value)).spread, 4),
    },
  ],
  dipOfError: [
    {
      where: 'AUDIT',
      answer: (value) => isFound(dipped(value), 'level-below-between'),
      between: [0.5, 6],
      measured: (value) => {
        const { events, levels } = dipped(value);
        if (levels === null) return NaN;
        const lowest = lowestBetweenReadings(events, levels);
        const [first, last] = [lowest.from[5] ?? 0, lowest.to[5] ?? 0];
        const dip = Math.min(at(levels.expected, first), at(levels.expected, last)) - at(lowest.expected, 5);
        return dip / (0.05 / 1.96);
      },
    },
  ],
  smallestFall: [
    {
      where: 'AUDIT',
      answer: (value) => {
        const fall = value * 1.95;
        return isFound(changed((fall / 2.25) * 200, 2.25 - fall), 'unmatched-change');
      },
      step: 0.0001,
    },
  ],
  levelToKeep: [
    {
      where: 'AUDIT',
      answer: (value) => {
        const level = 1.95 * value;
        return audited(
          treated(
            log('Cu|WC L', ...rowsDaily(0, 4, level, ''), [atDay(5), level, 40], ...rowsDaily(6, 8, level * 0.8, '')),
          ),
          'unmatched-change',
        );
      },
      step: 0.001,
      with: 'above',
    },
  ],
  madeUp: [
    {
      where: 'AUDIT',
      answer: (value) => {
        const fall = (2.25 * 60) / 200;
        return isFound(
          treated(
            log(
              'Cu|WC L|dose',
              ...rowsDaily(0, 4, 2.25, '', ''),
              [atDay(5), 2.25, 60, (value * fall * 200) / 10],
              ...rowsDaily(6, 8, 2.25 - fall * (1 - value), '', ''),
            ),
          ),
          'unmatched-change',
        );
      },
      step: 0.0001,
    },
  ],
  matchedApart: [
    {
      where: 'AUDIT',
      answer: (value) => findingOf(changed(value, 2.25), 'unmatched-change').shownMatched !== null,
      between: [4, 40],
      measured: (value) => {
        const treatment = changed(value, 2.25);
        const steady = steadyOf(treatment);
        if (treatment.levels === null) return NaN;
        const { before, after } = findingOf(treatment, 'unmatched-change');
        return ((before - after) * carriedShare(treatment.levels.path.steps, steady.rate, 7, 8)) / at(steady.spread, 8);
      },
    },
  ],
  matchedDenied: [
    {
      where: 'AUDIT',
      answer: (value) => isFound(changed(16, 2.25 - value, 'matched', 26), 'unmatched-change'),
      between: [0.09, 0.25],
      measured: (value) => offOf(changed(16, 2.25 - value, 'matched', 26), 28),
    },
  ],
  loweringChanges: [
    {
      where: 'AUDIT',
      answer: (value) =>
        isFound(
          treated(
            log(
              'Cu|WC L',
              ...rowsDaily(0, 5, 2.25, ''),
              ...Array.from({ length: value }, (_, day): Row => [atHour(24 * (6 + day) - 12), '', 60]),
              [atDay(12), 2.25 * 0.7 ** value, ''],
            ),
          ),
          'unmatched-change',
        ),
      step: 1,
      with: 'above',
    },
  ],
  absorberDays: [
    {
      where: 'AUDIT',
      answer: (value) =>
        isFound(
          treated(
            log(
              'Cu|note',
              [atDay(0), 2.4, 'added live rock'],
              [atDay(1), 2.4, ''],
              [atDay(2), 2.4, ''],
              [atDay(value), 1.96, ''],
              [atDay(value + 0.5), 1.96, ''],
            ),
          ),
          'absorber',
        ),
      step: 0.001,
      with: 'below',
    },
  ],
  absorberSure: [
    {
      where: 'AUDIT',
      answer: (value) => isFound(losing(value), 'absorber'),
      between: [0.005, 0.06],
      measured: (value) => {
        const { levels } = losing(value);
        if (levels === null) return NaN;
        const { rate, spread } = lossEstimate(levels.path.steps, levels.path.course.drift);
        return (rate + Math.log1p(-0.005)) / spread;
      },
    },
  ],
  topOffSure: [
    {
      where: 'AUDIT',
      answer: (value) => isFound(toppedOff(value), 'copper-in-top-off'),
      between: [0, 0.04],
      measured: (value) => {
        const { level, spread } = topOff(toppedOff(value));
        return level / spread;
      },
    },
  ],
  topOffPart: [
    {
      where: 'AUDIT',
      answer: (value) => isFound(toppedOff(value, 12, 8, fine), 'copper-in-top-off'),
      between: [0, 0.06],
      measured: (value) => topOff(toppedOff(value, 12, 8, fine)).level / 2.25,
    },
  ],
  topOffs: [
    { where: 'AUDIT', answer: (value) => isFound(toppedOff(0.1, value), 'copper-in-top-off'), step: 1, with: 'above' },
  ],
};
