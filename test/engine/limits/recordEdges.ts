import {
  atDay,
  atHour,
  audited,
  findingOf,
  log,
  noStrength,
  rowsDaily,
  sulfate,
  treated,
  wordsOf,
  type Edges,
  type Row,
} from './edge.js';

/** Readings in a row on a card, a day apart. */
const readings = (card: string, ...levels: readonly number[]): string =>
  audited(treated(log('Cu', ...levels.map((level, day): Row => [atDay(day), level])), card), 'wrong-form');
const lows = (level: number): string => readings(noStrength, ...Array<number>(6).fill(level));
const fitting = (card: string, level: number): unknown =>
  findingOf(treated(log('Cu', ...rowsDaily(0, 5, level)), card), 'wrong-form').fits;
const wrongWords = (card: string, level: number, words: RegExp): boolean =>
  words.test(wordsOf(findingOf(treated(log('Cu', ...rowsDaily(0, 5, level)), card), 'wrong-form')));

export const recordEdges: Edges<
  | 'readingsOnLimit'
  | 'wrongFormReadings'
  | 'wrongFormOver'
  | 'wrongFormUnder'
  | 'wrongFormTrace'
  | 'raiseOver'
  | 'stillRising'
  | 'formFits'
> = {
  readingsOnLimit: [
    {
      where: 'AUDIT',
      answer: (value) =>
        audited(treated(log('Cu', [atDay(0), 2.25], ...rowsDaily(1, value, 1.95))), 'readings-on-limit') === ''
          ? 'none'
          : 'found',
      step: 1,
      with: 'above',
    },
    {
      where: 'AUDIT, the words',
      gives: () =>
        /^Three readings in a row/.test(
          wordsOf(findingOf(treated(log('Cu', ...rowsDaily(0, 4, 1.95))), 'readings-on-limit')),
        )
          ? 3
          : NaN,
    },
  ],
  wrongFormReadings: [
    {
      where: 'AUDIT',
      answer: (value) => readings(sulfate, ...Array<number>(value).fill(2.25)) !== '',
      step: 1,
      with: 'above',
    },
  ],
  wrongFormOver: [
    {
      where: 'AUDIT',
      answer: (value) => readings(sulfate, ...Array<number>(3).fill(0.21 * value)),
      step: 0.01,
      with: 'below',
    },
    { where: 'AUDIT, the words', gives: () => (wrongWords(sulfate, 2.25, /over three times the top/) ? 3 : NaN) },
  ],
  wrongFormUnder: [
    { where: 'AUDIT', answer: (value) => lows(1.95 * value), step: 0.001, with: 'above' },
    { where: 'AUDIT, the words', gives: () => (wrongWords(noStrength, 0.5, /under a third of the low/) ? 1 / 3 : NaN) },
  ],
  wrongFormTrace: [
    { where: 'AUDIT', answer: (value) => lows(value * ((1 / 3) * 1.95 - 1e-9)), step: 0.001, with: 'below' },
  ],
  raiseOver: [
    {
      where: 'AUDIT, after a dose',
      answer: (value) =>
        audited(
          treated(
            log(
              'Cu|dose',
              [atHour(0), 0.4, 1],
              [atHour(value), 0.5, ''],
              [atHour(value + 0.2), 0.5, ''],
              [atHour(value + 0.4), 0.5, ''],
            ),
            noStrength,
          ),
          'wrong-form',
        ),
      step: 0.01,
      with: 'above',
    },
    {
      where: 'AUDIT, in a log without doses',
      answer: (value) =>
        audited(
          treated(
            log('Cu', [atHour(0), 0.5], [atHour(value), 0.5], [atHour(value + 0.2), 0.5], [atHour(value + 0.4), 0.5]),
            noStrength,
          ),
          'wrong-form',
        ),
      step: 0.01,
      with: 'above',
    },
  ],
  stillRising: [
    {
      where: 'AUDIT',
      answer: (value) =>
        audited(
          treated(
            log(
              'Cu',
              [atHour(0), 0.4],
              [atHour(40), 0.4 * value],
              [atHour(41), 0.4 * value],
              [atHour(42), 0.4 * value],
            ),
            noStrength,
          ),
          'wrong-form',
        ),
      step: 0.001,
      with: 'above',
    },
  ],
  formFits: [
    {
      where: 'AUDIT, over the band',
      answer: (value) => fitting(sulfate, (1 + value) * 0.55),
      step: 0.001,
      with: 'above',
    },
    {
      where: 'AUDIT, under the band',
      answer: (value) => fitting(noStrength, (1 - value) * 0.45),
      step: 0.001,
      with: 'above',
    },
  ],
};
