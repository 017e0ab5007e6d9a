import { observationEnd } from '../../../src/engine/plan/observationEnd.js';
import { secondBathWindow } from '../../../src/engine/plan/secondBathWindow.js';
import { gateText } from '../../../src/engine/text/gateText.js';
import { copperMgPerLitre, serialDay } from '../../../src/engine/units/quantity.js';
import {
  atDay,
  gateOf,
  log,
  numberIn,
  planned,
  planWords,
  rowsDaily,
  start,
  stepOf,
  treated,
  type Edges,
  type Row,
} from './edge.js';

const card = 'volume|200 L\nform|chelated\ndays|14';

/** Fourteen days of a hold, the water changed on day 15, then rows of one's own. */
const after = (...rows: readonly Row[]): string =>
  log('Cu|WC L|note', ...rowsDaily(0, 14, 2.25, '', ''), [atDay(15), '', 200, ''], ...rows);
const gone = (...rows: readonly Row[]) => gateOf(treated(after(...rows), card, atDay(40)), 'copper out');
const out = (level: number | string) => gone([atDay(16), level, '', '']).why.code;
/** Readings that show the copper gone, and baths by their days. */
const bathed = (...days: readonly number[]) =>
  gateOf(
    treated(
      after(
        [atDay(17), 0, '', ''],
        [atDay(22), 0, '', ''],
        ...days.map((day): Row => [atDay(day), '', '', 'praziquantel given']),
      ),
      card,
      atDay(60),
    ),
    'flukes treated',
  ).why;
const isInWindow = (days: number): boolean => {
  const why = bathed(23, 23 + days);
  return why.code === 'praziquantel' && why.second !== null;
};
const observed = (day: number, own = card) =>
  gateOf(
    treated(after([atDay(17), 0, '', ''], [atDay(22), 0, '', ''], [atDay(24), 0, '', '']), own, atDay(day)),
    'observation',
  );
const praziquantel = planned({ medicines: ['praziquantel'] });

export const afterEdges: Edges<
  | 'copperGone'
  | 'goneBound'
  | 'firstTestOut'
  | 'secondTestOut'
  | 'observeEarliest'
  | 'observeAdvised'
  | 'lowChelatedHold'
  | 'chelatedFrom'
  | 'fallowDays'
  | 'fallowWarmth'
  | 'hatchingFirst'
  | 'hatchingLast'
  | 'flukeMaturity'
  | 'bathDay'
> = {
  copperGone: [{ where: 'READY', answer: out, step: 0.001, with: 'below' }],
  goneBound: [
    { where: 'READY, a bound', answer: (value) => out(`<${value}`), step: 0.001, with: 'below' },
    {
      where: 'READY, a coarse meter',
      answer: (value) =>
        gateOf(treated(after([atDay(16), value, '', '']), `${card}\nmeter accuracy|0.15`, atDay(40)), 'copper out').why
          .code,
      step: 0.001,
      with: 'below',
    },
  ],
  firstTestOut: [
    {
      where: 'READY',
      answer: (value) => gateText(gone([atDay(15 + value / 24), 0, '', '']).why),
      step: 0.01,
      with: 'above',
    },
    {
      where: 'READY, when it is due',
      gives: () => {
        const { why } = gone([atDay(16), 0, '', '']);
        return why.code === 'test-due' ? 24 * (why.due - atDay(15)) : NaN;
      },
    },
    {
      where: 'READY, the words',
      gives: () => numberIn(gateText(gone([atDay(16), 0, '', '']).why), /again (\d+) h after/),
    },
    { where: 'PLAN', gives: () => stepOf(planned(), 'test-after-change').hours },
    {
      where: 'PLAN, its time',
      gives: () => 24 * (stepOf(planned(), 'test-after-change').when - stepOf(planned(), 'finish').when),
    },
    { where: 'PLAN, its words', gives: () => numberIn(planWords(), /test copper (\d+) h after the last/) },
    {
      where: 'PLAN, sentinel fish',
      gives: () => 24 * (stepOf(planned(), 'sentinel').when - stepOf(planned(), 'finish').when),
    },
    {
      where: 'PLAN, the first bath',
      gives: () => 24 * (stepOf(praziquantel, 'praziquantel').when - stepOf(praziquantel, 'finish').when),
    },
  ],
  secondTestOut: [
    {
      where: 'READY',
      answer: (value) => gone([atDay(17), 0, '', ''], [atDay(15 + value / 24), 0, '', '']).met,
      step: 0.01,
      with: 'above',
    },
    {
      where: 'READY, when it is due',
      gives: () => {
        const { why } = gone([atDay(17), 0, '', '']);
        return why.code === 'test-due' ? 24 * (why.due - atDay(15)) : NaN;
      },
    },
    {
      where: 'READY, the words',
      gives: () => 24 * numberIn(gateText(gone([atDay(17), 0, '', '']).why), /again (\d+) days after/),
    },
    { where: 'PLAN', gives: () => 24 * numberIn(planWords(), /test copper (\d+) days after the last/) },
  ],
  observeEarliest: [
    { where: 'PLAN, why observe', gives: () => 7 * numberIn(planWords(), /practice: (\d+) to \d+ weeks/) },
    {
      where: 'OBSERVEUNTIL',
      gives: () => observationEnd({ ended: serialDay(start), form: 'sulfate' }).earliest - start,
    },
    { where: 'READY', answer: (value) => observed(17 + value).met, step: 0.001, with: 'above' },
    { where: 'PLAN', gives: () => stepOf(planned(), 'observe-earliest').days },
    { where: 'PLAN, the words', gives: () => numberIn(planWords(), /observe them there for (\d+) to/) },
  ],
  observeAdvised: [
    { where: 'PLAN, why observe', gives: () => 7 * numberIn(planWords(), /practice: \d+ to (\d+) weeks/) },
    {
      where: 'OBSERVEUNTIL',
      gives: () => observationEnd({ ended: serialDay(start), form: 'sulfate' }).advised - start,
    },
    {
      where: 'OBSERVEUNTIL, after a low hold',
      gives: () =>
        observationEnd({ ended: serialDay(start), form: 'chelated', level: copperMgPerLitre(2) }).earliest - start,
    },
    { where: 'PLAN', gives: () => stepOf(planned(), 'observe-advised').days },
    { where: 'PLAN, the words', gives: () => numberIn(planWords(), /observe them there for \d+ to (\d+) days/) },
  ],
  lowChelatedHold: [
    {
      where: 'OBSERVEUNTIL',
      answer: (value) =>
        observationEnd({ ended: serialDay(start), form: 'chelated', level: copperMgPerLitre(value) }).earliest - start,
      step: 0.001,
      with: 'above',
    },
    { where: 'PLAN, the words', gives: () => numberIn(planWords(), /was under ([\d.]+) mg/) },
  ],
  chelatedFrom: [
    {
      where: 'READY',
      answer: (value) => {
        const held = log(
          'Cu|WC L',
          ...rowsDaily(0, 14, 1.8, ''),
          [atDay(15), '', 200],
          [atDay(17), 0, ''],
          [atDay(22), 0, ''],
        );
        const { why } = gateOf(treated(held, `volume|200 L\nband|${value}|2.5\ndays|14`, atDay(60)), 'observation');
        return why.code === 'observed' ? why.earliest : why;
      },
      step: 0.01,
      with: 'above',
    },
  ],
  fallowDays: [
    { where: 'PLAN', gives: () => stepOf(planned(), 'display-fallow').days },
    { where: 'PLAN, its day', gives: () => stepOf(planned(), 'display-fallow').when - start },
  ],
  fallowWarmth: [{ where: 'PLAN, the words', gives: () => numberIn(planWords(), /days at (\d+) °C or warmer/) }],
  hatchingFirst: [
    {
      where: 'READY, the end of the window',
      answer: (value) => isInWindow(value + 10 + 0.5),
      step: 0.01,
      with: 'below',
    },
    { where: 'PLAN', gives: () => secondBathWindow().until - 10 },
    { where: 'PLAN, the words', gives: () => numberIn(planWords({ medicines: ['praziquantel'] }), /begins at (\d+)–/) },
  ],
  hatchingLast: [
    {
      where: 'READY, the start of the window',
      answer: (value) => isInWindow(value + 1 - 0.5),
      step: 0.01,
      with: 'above',
    },
    { where: 'PLAN', gives: () => secondBathWindow().from - 1 },
    {
      where: 'PLAN, the words',
      gives: () => numberIn(planWords({ medicines: ['praziquantel'] }), /begins at \d+–(\d+) days/),
    },
  ],
  flukeMaturity: [
    {
      where: 'READY, the end of the window',
      answer: (value) => isInWindow(value + 5 + 0.5),
      step: 0.01,
      with: 'below',
    },
    { where: 'PLAN', gives: () => secondBathWindow().until - 5 },
    {
      where: 'PLAN, the words',
      gives: () => numberIn(planWords({ medicines: ['praziquantel'] }), /maturity at (\d+)–/),
    },
  ],
  bathDay: [
    { where: 'READY, before the window', answer: (value) => isInWindow(7 - value), step: 0.01, with: 'below' },
    { where: 'READY, after the window', answer: (value) => isInWindow(15 + value), step: 0.01, with: 'below' },
  ],
};
