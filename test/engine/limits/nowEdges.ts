import { stateOf, type State } from '../../../src/engine/judgement/state.js';
import { waterIn } from '../../../src/engine/judgement/measured.js';
import {
  atDay,
  atHour,
  chelated,
  log,
  rowsDaily,
  start,
  taskKinds,
  tasks,
  treated,
  type Edges,
  type Row,
} from './edge.js';

const stateAt = (rows: readonly Row[], now: number, heading = 'Cu', card = chelated): State =>
  stateOf(treated(log(heading, ...rows), card, now));
const urgent = `${chelated}\npace|urgent`;

/** A reading after a week of 2.25, and after it another one. */
const after = (...readings: readonly number[]): State =>
  stateAt([...rowsDaily(0, 6, 2.25), ...readings.map((read, at): Row => [atDay(7 + at), read])], atDay(9));

/** By when something is to be done, in hours from the start. */
const dueAt = (act: string, rows: readonly Row[], now: number, card = chelated): number =>
  24 * ((tasks(treated(log('Cu|dose', ...rows), card, now)).find((task) => task.act === act)?.by ?? NaN) - start);

const deaths = log('Cu|dead', [atHour(0), 2.25, 3], [atHour(24), 2.25, ''], [atHour(47), 2.25, '']);

/** The limits of the judgement of a moment. */
export const nowEdges: Edges<
  | 'disbelieved'
  | 'settledWithin'
  | 'rationWindow'
  | 'dosesADayNow'
  | 'doseGap'
  | 'urgentDoseGap'
  | 'heldDays'
  | 'heldApart'
  | 'testAfterDose'
  | 'farOverNow'
  | 'mostChange'
  | 'changeStep'
  | 'eventOpen'
  | 'overdueAfter'
  | 'intoleranceDays'
  | 'dayBegins'
  | 'dayEnds'
  | 'soonestTest'
> = {
  disbelieved: [
    {
      where: 'the believed level',
      answer: (read) => after(read).believed?.doubt !== null,
      between: [2.25, 3],
      measured: (read) => {
        const doubt = after(read * 1.00001).believed?.doubt;
        return doubt ? (doubt.written - doubt.expected) / (doubt.error / 2) : NaN;
      },
    },
  ],
  settledWithin: [
    {
      where: 'the believed level',
      answer: (next) => after(3.4, next).believed?.slips.length === 1,
      between: [2.25, 2.6],
      measured: (next) => {
        const believed = after(3.4, next - 0.00001).believed;
        const explained = (believed?.slips[0]?.expected ?? NaN) * Math.exp(-(believed?.rate ?? NaN));
        return (next - explained) / 0.05;
      },
    },
  ],
  rationWindow: [
    {
      where: 'the ration',
      answer: (value) =>
        stateAt(
          [
            [atHour(0), 1, 4],
            [atHour(20), 1, ''],
          ],
          atHour(value),
          'Cu|dose',
        ).pace?.raised,
      step: 0.01,
    },
  ],
  dosesADayNow: [
    {
      where: 'a single dose',
      gives: () => {
        const pace = stateAt([[atHour(0), 1]], atHour(1)).pace;
        return (pace?.ration ?? NaN) / (pace?.single ?? NaN);
      },
    },
  ],
  doseGap: [{ where: 'DONOW', gives: () => dueAt('dose', [[atHour(0), 1, 2]], atHour(0.5)) }],
  urgentDoseGap: [{ where: 'DONOW', gives: () => dueAt('dose', [[atHour(0), 1, 2]], atHour(0.5), urgent) }],
  heldDays: [
    {
      where: 'the level held',
      answer: (value) =>
        stateAt(
          [
            [atDay(0), 2],
            [atDay(0.5), 2],
            [atDay(6.9), 1],
          ],
          atDay(value),
        ).pace?.held,
      step: 0.01,
      with: 'below',
    },
  ],
  heldApart: [
    {
      where: 'the level held',
      answer: (value) =>
        stateAt(
          [
            [atHour(0), 2],
            [atHour(value), 2],
          ],
          atHour(13),
        ).pace?.held,
      step: 0.01,
      with: 'above',
    },
  ],
  testAfterDose: [
    {
      where: 'DONOW',
      answer: (value) => taskKinds(treated(log('Cu|dose', [atHour(0), 1, value * 45]), chelated, atHour(0.5))),
      step: 0.001,
      with: 'below',
    },
  ],
  farOverNow: [
    {
      where: 'DONOW',
      answer: (value) =>
        taskKinds(treated(log('Cu', ...rowsDaily(0, 6, 2.25), [atDay(7), 2.55 * value]), chelated, atDay(7))),
      step: 0.001,
      with: 'above',
    },
  ],
  mostChange: [
    {
      where: 'DONOW',
      gives: () => (tasks(treated(log('Cu', [atHour(0), 9]), chelated, atHour(1)))[0]?.amount ?? NaN) / 200,
    },
  ],
  changeStep: [{ where: 'DONOW', gives: () => waterIn(0.3, 'up') }],
  eventOpen: [
    {
      where: 'DONOW',
      answer: (value) => taskKinds(treated(deaths, chelated, atHour(value))),
      step: 0.01,
      with: 'below',
    },
  ],
  overdueAfter: [
    {
      where: 'DONOW',
      answer: (value) => {
        const why = tasks(treated(deaths, chelated, atHour(value))).find(({ urgency }) => urgency === 1)?.why;
        return typeof why === 'object' ? why.overdue : why;
      },
      step: 0.01,
      with: 'below',
    },
  ],
  intoleranceDays: [
    {
      where: 'the aim',
      answer: (value) =>
        stateAt(
          [
            [atDay(0), 2.25, 'all eating'],
            [atDay(1), 2.25, 'lethargic'],
            [atDay(2), 2.25, 'eating well, all active'],
          ],
          atDay(2 + value),
          'Cu|signs',
        ).aim,
      step: 0.01,
      with: 'below',
    },
  ],
  dayBegins: [
    {
      where: 'the next test',
      answer: (value) => dueAt('test copper', [[atHour(12 + value), 1, '']], atHour(13 + value)) - value > 23.5,
      step: 0.01,
      with: 'above',
    },
  ],
  dayEnds: [
    {
      where: 'the next test',
      answer: (value) =>
        Math.abs(dueAt('test copper', [[atHour(value - 12), 1, '']], atHour(value - 11)) - value) < 1e-4,
      step: 0.01,
      with: 'below',
    },
  ],
  soonestTest: [{ where: 'the next test', gives: () => dueAt('test copper', [[atHour(8), 1, '']], atHour(9)) - 8 }],
};
