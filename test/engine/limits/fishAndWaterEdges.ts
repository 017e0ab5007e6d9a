import { meterAccuracyOf } from '../../../src/engine/rules/meterError.js';
import { usualAimChance } from '../../../src/engine/chance/readingToKeep.js';
import {
  atDay,
  atHour,
  audited,
  chelated,
  findingOf,
  log,
  noStrength,
  numberIn,
  planned,
  planWords,
  rowsDaily,
  stepOf,
  sulfate,
  treated,
  wordsOf,
  type Edges,
} from './edge.js';

const ammonia = (value: number): string =>
  audited(treated(log('Cu|free NH3', [atDay(0), 2.25, 0], [atDay(1), 2.25, value])), 'unionised-ammonia');
const ammoniaWords = (words: RegExp): number =>
  numberIn(wordsOf(findingOf(treated(log('Cu|free NH3', [atDay(0), 2.25, 0.2])), 'unionised-ammonia')), words);
const salinity = (value: number): string =>
  audited(treated(log('Cu|salinity', [atDay(0), 2.25, 33], [atDay(1), 2.25, value])), 'low-salinity');
const gravity = (value: number) => treated(log('Cu|salinity', [atDay(0), 2.25, 33], [atDay(1), 2.25, value]));
const salinityWords = (words: RegExp): number =>
  numberIn(wordsOf(findingOf(treated(log('Cu|salinity', [atDay(0), 2.25, 18])), 'low-salinity')), words);
const died = (fish: number): string =>
  audited(treated(log('Cu|dead', [atDay(0), 2.25, 0], [atDay(1), 2.25, fish])), 'deaths');

/** A lot of 20 fish, or near it, of which two die: what share that is. */
const diedOfLot = (share: number): string =>
  audited(
    treated(log('Cu|fish in|dead', [atDay(0), 2.25, `${Math.round(2 / share)} chromis`, ''], [atDay(1), 2.25, '', 2])),
    'deaths',
  );
const deathWords = (words: RegExp): boolean =>
  words.test(wordsOf(findingOf(treated(log('Cu|dead', [atDay(0), 2.25, 4])), 'deaths')));

export const fishAndWaterEdges: Edges<
  | 'deathsADay'
  | 'deathsOfLot'
  | 'deathHours'
  | 'settling'
  | 'clearDays'
  | 'settledIn'
  | 'salinityWarning'
  | 'salinityDanger'
  | 'salinityWritten'
  | 'ammoniaNote'
  | 'ammoniaWarning'
  | 'ammoniaDanger'
  | 'waterTestAge'
  | 'saltiest'
  | 'copperTrace'
  | 'meterLeast'
  | 'meterOfAim'
  | 'drift'
  | 'shownChance'
  | 'lossSulfate'
  | 'lossAmine'
  | 'lossChelated'
> = {
  deathsADay: [
    { where: 'AUDIT', answer: died, step: 1, with: 'above' },
    { where: 'AUDIT, the words', gives: () => (deathWords(/Three deaths/) ? 3 : NaN) },
  ],
  deathsOfLot: [
    { where: 'AUDIT', answer: diedOfLot, step: 0.005, with: 'above' },
    { where: 'AUDIT, the words', gives: () => (deathWords(/a tenth of a lot/) ? 0.1 : NaN) },
  ],
  deathHours: [
    {
      where: 'AUDIT',
      answer: (value) =>
        audited(
          treated(log('Cu|dead', [atHour(0), 2.25, 1], [atHour(12), 2.25, 1], [atHour(value), 2.25, 1])),
          'deaths',
        ),
      step: 0.01,
      with: 'below',
    },
    {
      where: 'AUDIT, the words',
      gives: () =>
        numberIn(wordsOf(findingOf(treated(log('Cu|dead', [atDay(0), 2.25, 4])), 'deaths')), /lot, within (\d+) hours/),
    },
  ],
  settling: [
    {
      where: 'AUDIT',
      answer: (value) =>
        audited(
          treated(
            log(
              'Cu|fish in|signs',
              [atDay(0), 2.25, '', ''],
              [atDay(1), 2.25, '3 chromis', ''],
              [atDay(1 + value), 2.25, '', 'not eating'],
            ),
          ),
          'first-signs',
        ),
      step: 0.001,
      with: 'above',
    },
  ],
  clearDays: [
    {
      where: 'AUDIT',
      answer: (value) =>
        audited(
          treated(
            log('Cu|signs', [atDay(0), 2.25, ''], [atDay(1), 2.25, 'lethargic'], [atDay(1 + value), 2.25, 'lethargic']),
          ),
          'second-signs',
        ),
      step: 0.001,
      with: 'above',
    },
    {
      where: 'AUDIT, the words',
      gives: () =>
        /three clear days/.test(
          wordsOf(
            findingOf(
              treated(log('Cu|signs', [atDay(0), 2.25, 'lethargic'], [atDay(9), 2.25, 'lethargic'])),
              'second-signs',
            ),
          ),
        )
          ? 3
          : NaN,
    },
  ],
  settledIn: [
    {
      where: 'AUDIT, the words',
      gives: () =>
        numberIn(
          wordsOf(
            findingOf(treated(log('Cu|signs', [atDay(0), 2.25, ''], [atDay(1), 2.25, 'lethargic'])), 'first-signs'),
          ),
          /in over (\d+) h/,
        ),
    },
  ],
  salinityWarning: [
    { where: 'AUDIT', answer: salinity, step: 0.01, with: 'above' },
    {
      where: 'AUDIT, the card',
      answer: (value) =>
        audited(treated(log('Cu', [atDay(0), 2.25]), `${chelated}\nsalinity|${value}`), 'low-salinity'),
      step: 0.01,
      with: 'above',
    },
    {
      where: 'AUDIT, the limit it names',
      gives: () => findingOf(treated(log('Cu|salinity', [atDay(0), 2.25, 24])), 'low-salinity').limit,
    },
    { where: 'AUDIT, the words', gives: () => salinityWords(/was run at (\d+) g/) },
    { where: 'PLAN', gives: () => numberIn(planWords(), /salinity (\d+) g\/kg or more/) },
    { where: 'PLAN, a medicine', gives: () => numberIn(planWords({ medicines: ['hypo'] }), /copper below (\d+) g/) },
  ],
  salinityDanger: [
    {
      where: 'AUDIT, water that grows thinner',
      answer: (value) =>
        audited(treated(log('Cu|salinity', [atDay(0), 2.25, 24], [atDay(1), 2.25, value])), 'low-salinity'),
      step: 0.01,
      with: 'above',
    },
    { where: 'AUDIT', answer: salinity, step: 0.01, with: 'above' },
    {
      where: 'AUDIT, the limit it names',
      gives: () => findingOf(treated(log('Cu|salinity', [atDay(0), 2.25, 18])), 'low-salinity').limit,
    },
    { where: 'AUDIT, the words', gives: () => salinityWords(/; under (\d+), or/) },
  ],
  salinityWritten: [
    {
      where: 'AUDIT, a specific gravity of almost fresh water',
      answer: (value) => audited(gravity(value), 'low-salinity') !== '',
      between: [1.0001, 1.003],
      measured: (value) => gravity(value).log.numbers.salinity?.[1] ?? NaN,
    },
  ],
  ammoniaNote: [
    { where: 'AUDIT', answer: ammonia, step: 0.0001, with: 'above' },
    { where: 'AUDIT, the words', gives: () => ammoniaWords(/quarantine: ([\d.]+) mg/) },
  ],
  ammoniaWarning: [
    { where: 'AUDIT', answer: ammonia, step: 0.0001, with: 'above' },
    { where: 'AUDIT, the words', gives: () => ammoniaWords(/noted, ([\d.]+) a warning/) },
  ],
  ammoniaDanger: [
    { where: 'AUDIT', answer: ammonia, step: 0.0001, with: 'above' },
    { where: 'AUDIT, the words', gives: () => ammoniaWords(/warning, ([\d.]+) a danger/) },
  ],
  waterTestAge: [
    {
      where: 'AUDIT',
      answer: (value) =>
        audited(
          treated(
            log(
              'Cu|NH3|pH|temp|salinity',
              [atHour(24 - value), 2.25, '', 8.2, 25, 33],
              [atHour(24), 2.25, 2, '', '', ''],
            ),
          ),
          'unionised-ammonia',
          'ammonia-not-judged',
        ),
      step: 0.01,
      with: 'below',
    },
  ],
  saltiest: [
    {
      where: 'AUDIT',
      answer: (value) =>
        audited(
          treated(log('Cu|NH3|pH|temp|salinity', [atDay(0), 2.25, 2, 8.2, 25, value])),
          'unionised-ammonia',
          'ammonia-outside-range',
        ),
      step: 0.01,
      with: 'below',
    },
  ],
  copperTrace: [
    {
      where: 'AUDIT',
      answer: (value) => audited(treated(log('Cu|salinity', [atDay(0), 1.95 * value, 18])), 'low-salinity'),
      step: 0.001,
      with: 'above',
    },
  ],
  meterLeast: [
    {
      where: 'a card without an accuracy',
      gives: () => meterAccuracyOf(treated(log('Cu', [atDay(0), 0.2]), sulfate).card),
    },
  ],
  meterOfAim: [
    {
      where: 'a card without an accuracy',
      gives: () => 2.25 / meterAccuracyOf(treated(log('Cu', [atDay(0), 2]), 'volume|200 L\nform|chelated').card),
    },
  ],
  drift: [
    {
      where: 'LEVELS',
      gives: () => (treated(log('Cu', ...rowsDaily(0, 3, 2.25))).levels?.path.course.drift ?? NaN) / 1.95,
    },
  ],
  shownChance: [
    { where: 'READINGTOKEEP', gives: () => usualAimChance },
    {
      where: 'AUDIT, the words',
      gives: () =>
        numberIn(
          wordsOf(
            findingOf(treated(log('Cu', [atDay(0), 0.2]), `${sulfate}\nmeter accuracy|0.05`), 'meter-cannot-show'),
          ),
          /a chance of (\d+) %/,
        ) / 100,
    },
  ],
  lossSulfate: [{ where: 'PLAN', gives: () => stepOf(planned({ form: 'sulfate' }), 'supplies').lossPerDay }],
  lossAmine: [
    { where: 'PLAN', gives: () => stepOf(planned({ form: 'amine' }), 'supplies').lossPerDay },
    {
      where: 'AUDIT, a card without a form',
      gives: () =>
        findingOf(
          treated(
            log(
              'Cu|note',
              [atDay(0), 2.4, 'added live rock'],
              ...[2.25, 2.11, 1.98, 1.86, 1.75, 1.64].map((level, day) => [atDay(day + 1), level, '']),
            ),
            `${noStrength.replace('form|chelated', 'band|1.5|2.6')}`,
          ),
          'absorber',
        ).usual,
    },
  ],
  lossChelated: [{ where: 'PLAN', gives: () => stepOf(planned(), 'supplies').lossPerDay }],
};
