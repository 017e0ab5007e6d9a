import { ramp } from '../../../src/engine/dose/ramp.js';
import { splitDose } from '../../../src/engine/dose/splitDose.js';
import { pacePlan, type Pace } from '../../../src/engine/dose/pacePlan.js';
import { decidingDose } from '../../../src/engine/plan/decidingDose.js';
import { steadyLevels } from '../../../src/engine/rules/steady/steadyLevels.js';
import { rampTable } from '../../../src/engine/text/doseTables.js';
import { doNowTable } from '../../../src/engine/text/doNowTable.js';
import {
  copperMgPerLitre,
  copperMgPerMl,
  days,
  litres,
  millilitres,
  serialDay,
} from '../../../src/engine/units/quantity.js';
import {
  atDay,
  atHour,
  audited,
  chelated,
  findingOf,
  log,
  numberIn,
  planned,
  planWords,
  rowsDaily,
  start,
  stepOf,
  taskKinds,
  tasks,
  treated,
  wordsOf,
  type Edges,
  type Row,
} from './edge.js';

const aim = 2.25;
const urgent = `${chelated}\npace|urgent`;

interface Raise {
  readonly pace?: Pace;
  readonly level?: number;
  readonly dosesADay?: number;
}

function raised({ pace = 'gradual', level = 0, dosesADay }: Raise) {
  const steps = ramp({
    volume: litres(200),
    level: copperMgPerLitre(level),
    wanted: copperMgPerLitre(aim),
    strength: copperMgPerMl(10),
    start: serialDay(start),
    smallest: millilitres(0.000001),
    pace,
    ...(dosesADay === undefined ? {} : { dosesADay }),
  });
  if (!steps.ok) throw new Error(JSON.stringify(steps.problem));
  return steps.value;
}

/** Doses of so many mL at so many hours, after a test at 1 mg/L. */
function dosed(...doses: readonly (readonly [hours: number, millilitres: number])[]): string {
  // On the hour: a whole number would be a date without a time.
  return log('Cu|dose', [atHour(5), 1, ''], ...doses.map(([hours, dose]): Row => [atHour(6 + hours), '', dose]));
}
const twice = (row: number, text: string): boolean => audited(treated(text), 'double-dose').includes(`danger ${row} `);
const dosesOfADay = (pace: Pace): number => raised({ pace }).filter(({ at }) => at < start + 1).length;
const doseNow = (card: string): number => {
  const dose = tasks(treated(log('Cu', [atDay(0), 1]), card, atHour(1))).find((task) => task.act === 'dose');
  // 200 L of a solution of 10 mg/mL.
  return ((dose?.amount ?? NaN) * 10) / 200 / aim;
};
const testsFor = (pace: Pace, held: number): number => stepOf(planned({ pace, days: days(held) }), 'supplies').tests;
/** Two doses of a day and what the next reading says of them. */
const doubled = (dose: number) =>
  treated(
    log(
      'Cu|dose',
      ...rowsDaily(0, 4, 2, ''),
      [atHour(126), 2, dose],
      [atHour(127), '', dose],
      [atDay(6), 2 + dose * 0.075, ''],
    ),
  );

export const dosingEdges: Edges<
  | 'raiseFrom'
  | 'raiseHours'
  | 'gradualDays'
  | 'sensitiveDays'
  | 'urgentDays'
  | 'dosesADay'
  | 'urgentDosesADay'
  | 'dosingDay'
  | 'mostPerDose'
  | 'urgentMostPerDose'
  | 'testDecides'
  | 'planOff'
  | 'syringeStep'
  | 'doseTestAge'
  | 'doseDayGap'
  | 'doubleDose'
  | 'plannedGapLeast'
  | 'plannedGapMost'
  | 'plannedDoseOff'
  | 'evenGapOff'
  | 'evenGapLeast'
  | 'twiceApart'
  | 'mixing'
  | 'testAgeHolding'
  | 'testAgeRaising'
  | 'testAgeUrgent'
  | 'usualTest'
  | 'testsADayRaising'
  | 'testsADayUrgent'
  | 'spareTests'
> = {
  raiseFrom: [
    {
      where: 'AUDIT',
      answer: (value) =>
        audited(treated(log('Cu', [atDay(0), 1.95 * value], [atHour(12), 2.2], [atDay(1), 2.2])), 'raised-too-fast'),
      step: 0.001,
      with: 'above',
    },
  ],
  raiseHours: [
    {
      where: 'AUDIT',
      answer: (value) =>
        audited(treated(log('Cu', [atHour(0), 0], [atHour(value), 2.2], [atHour(48), 2.2])), 'raised-too-fast'),
      step: 0.01,
      with: 'above',
    },
  ],
  gradualDays: [{ where: 'PLAN', gives: () => stepOf(planned(), 'raise').days }],
  sensitiveDays: [{ where: 'PLAN', gives: () => stepOf(planned({ pace: 'sensitive' }), 'raise').days }],
  urgentDays: [{ where: 'PLAN', gives: () => stepOf(planned({ pace: 'urgent' }), 'raise').days }],
  dosesADay: [
    { where: 'RAMP', gives: () => dosesOfADay('gradual') },
    { where: 'RAMP, a number of days', gives: () => dosesOfADay(3) },
  ],
  urgentDosesADay: [{ where: 'RAMP', gives: () => dosesOfADay('urgent') }],
  dosingDay: [
    {
      where: 'DOSESPLIT',
      gives: () => {
        const parts = splitDose({ total: millilitres(9), dosesADay: 3, days: 1, smallest: millilitres(0.1) });
        return parts.ok ? (parts.value[2]?.offset ?? NaN) : NaN;
      },
    },
  ],
  mostPerDose: [
    {
      where: 'RAMP',
      answer: (value) => raised({ pace: 1, dosesADay: 1, level: aim * (1 - value) })[0]?.large,
      step: 0.0001,
      with: 'below',
    },
    {
      where: 'AUDIT',
      answer: (value) =>
        audited(
          treated(log('Cu|dose', [atDay(0), 1, (value * aim * 200) / 10 + 0.1], [atDay(1), 1.5, ''])),
          'dose-too-large',
        ),
      step: 0.001,
      with: 'below',
    },
    { where: 'DONOW', gives: () => doseNow(`${chelated}\npace|1`) },
    {
      where: 'AUDIT, the words',
      gives: () =>
        /at most a quarter of the aim/.test(
          wordsOf(findingOf(treated(log('Cu|dose', [atDay(0), 1, 15], [atDay(1), 1.5, ''])), 'dose-too-large')),
        )
          ? 0.25
          : NaN,
    },
  ],
  urgentMostPerDose: [
    {
      where: 'AUDIT',
      answer: (value) =>
        audited(
          treated(log('Cu|dose', [atDay(0), 1, (value * aim * 200) / 10 + 0.1], [atDay(1), 2.1, '']), urgent),
          'dose-too-large',
        ),
      step: 0.001,
      with: 'below',
    },
    { where: 'RAMP', gives: () => pacePlan('urgent').mostPerDose },
    {
      where: 'RAMP, the words',
      gives: () => {
        const rows = rampTable(raised({ pace: 'urgent', level: 0, dosesADay: 1 })).rows;
        return /more than half of wanted/.test(String(rows[0]?.[3])) ? 0.5 : NaN;
      },
    },
  ],
  testDecides: [
    {
      where: 'RAMP',
      answer: (value) => raised({ pace: 2, dosesADay: 1, level: (2 * value - 1) * aim })[0]?.testDecides,
      step: 0.0001,
      with: 'above',
    },
    { where: 'PLAN', gives: () => numberIn(planWords(), /from (\d+) % of the aim on/) / 100 },
  ],
  planOff: [
    { where: 'PLAN', gives: () => numberIn(planWords(), /off by more than (\d+) %/) / 100 },
    {
      where: 'RAMP',
      gives: () => numberIn(rampTable(raised({})).rows.join(), /by more than (\d+) %/) / 100,
    },
  ],
  syringeStep: [
    {
      where: 'AUDIT, a dose too large',
      answer: (value) =>
        audited(treated(log('Cu|dose', [atDay(0), 1, 11.25 + value], [atDay(1), 1.5, ''])), 'dose-too-large'),
      step: 0.001,
      with: 'below',
    },
    {
      where: 'AUDIT, equal doses of a plan',
      answer: (value) => {
        const other = (1 + value) / 0.94;
        return twice(4, dosed([0, 1], [2.75, other], [5.5, other]));
      },
      step: 0.001,
    },
  ],
  doseTestAge: [
    {
      where: 'AUDIT',
      answer: (value) => audited(treated(log('Cu|dose', [atHour(0), 1, ''], [atHour(value), '', 1])), 'dose-untested'),
      step: 0.01,
      with: 'below',
    },
  ],
  doseDayGap: [
    { where: 'AUDIT', answer: (value) => audited(treated(dosed([0, 1], [value, 1.5])), 'dose-untested'), step: 0.01 },
  ],
  doubleDose: [
    { where: 'AUDIT', answer: (value) => twice(4, dosed([0, 4], [value, 4])), step: 0.01, with: 'above' },
    {
      where: 'AUDIT, the words',
      gives: () => numberIn(wordsOf(findingOf(treated(dosed([0, 4], [1, 4])), 'double-dose')), /within (\d+) hours/),
    },
  ],
  plannedGapLeast: [
    { where: 'AUDIT', answer: (value) => twice(4, dosed([0, 2], [value, 2], [value + 2.75, 2])), step: 0.01 },
  ],
  plannedGapMost: [
    { where: 'AUDIT', answer: (value) => twice(4, dosed([0, 2], [2.75, 2], [2.75 + value, 2])), step: 0.01 },
  ],
  plannedDoseOff: [
    {
      where: 'AUDIT',
      answer: (value) => {
        const other = (10 + 0.1) / (1 - value);
        return twice(4, dosed([0, 10], [2.75, other], [5.5, other]));
      },
      step: 0.001,
    },
  ],
  evenGapOff: [
    {
      where: 'AUDIT',
      answer: (value) => twice(4, dosed([0, 2], [100 / 60, 2], [200 / 60, 2], [(300 + value) / 60, 2])),
      step: 0.1,
    },
  ],
  evenGapLeast: [
    {
      where: 'AUDIT',
      answer: (value) => twice(4, dosed([0, 2], [value, 2], [2 * value, 2], [3 * value, 2])),
      step: 0.01,
    },
  ],
  twiceApart: [
    {
      where: 'AUDIT',
      answer: (value) => findingOf(doubled(value), 'double-dose').verdict === 'cannot tell',
      between: [0.3, 4],
      measured: (value) => {
        const treatment = doubled(value);
        const { next } = findingOf(treatment, 'double-dose');
        const spread = steadyLevels(treatment)?.spread ?? [];
        return ((next?.withBoth ?? NaN) - (next?.withOne ?? NaN)) / (spread[spread.length - 1] ?? NaN);
      },
    },
  ],
  mixing: [
    {
      where: 'DONOW',
      gives: () => {
        const [task] = tasks(treated(log('Cu|dose', [atHour(0), 1, 4]), chelated, atHour(0.5)));
        return task?.act === 'test copper' ? 24 * (task.by - start) : NaN;
      },
    },
    {
      where: 'DONOW, the words',
      gives: () => {
        const rows = doNowTable(tasks(treated(log('Cu|dose', [atHour(0), 1, 4]), chelated, atHour(0.5)))).rows;
        return numberIn(String(rows[0]?.[4]), /let it mix (\d+) h/);
      },
    },
    {
      where: 'DONOW, the words of a dose',
      gives: () => {
        const rows = doNowTable(tasks(treated(log('Cu', [atHour(0), 1]), chelated, atHour(1)))).rows;
        return numberIn(rows.join(), /test (\d+) h after, before/);
      },
    },
    {
      where: 'PLAN',
      gives: () => {
        const deciding = decidingDose({ start: serialDay(start), form: 'chelated', pace: 'gradual' });
        return 24 * (stepOf(planned(), 'test-decides').when - deciding.at);
      },
    },
    { where: 'PLAN, the words', gives: () => numberIn(planWords(), /before a dose (\d+) h or more/) },
    { where: 'PLAN, the test’s words', gives: () => numberIn(planWords(), /test, (\d+) h after the dose/) },
    { where: 'RAMP, the words', gives: () => numberIn(rampTable(raised({})).rows.join(), /test (\d+) h after/) },
  ],
  testAgeHolding: [
    {
      where: 'DONOW',
      answer: (value) => taskKinds(treated(log('Cu', ...rowsDaily(0, 3, 2.25)), chelated, atHour(72 + value))),
      step: 0.01,
      with: 'below',
    },
  ],
  testAgeRaising: [
    {
      where: 'DONOW',
      answer: (value) => taskKinds(treated(log('Cu', [atDay(0), 1]), chelated, atHour(value))),
      step: 0.01,
      with: 'below',
    },
  ],
  testAgeUrgent: [
    {
      where: 'DONOW',
      answer: (value) => taskKinds(treated(log('Cu', [atDay(0), 1]), urgent, atHour(value))),
      step: 0.01,
      with: 'below',
    },
  ],
  usualTest: [
    {
      where: 'DONOW',
      gives: () => {
        // At 08:00, so that a day later is no hour of the night.
        const rows = rowsDaily(0, 3, 2.25).map(([when, ...cells]) => [Number(when) + 1 / 3, ...cells]);
        const next = tasks(treated(log('Cu', ...rows), chelated, atHour(81))).find(({ act }) => act === 'test copper');
        return next === undefined ? NaN : 24 * (next.by - atDay(3) - 1 / 3);
      },
    },
  ],
  testsADayRaising: [
    { where: 'PLAN', gives: () => (testsFor(100, 1) / 1.1 - 1) / 100 },
    { where: 'PLAN, the words', gives: () => (/test twice a day while raising/.test(planWords()) ? 2 : NaN) },
  ],
  testsADayUrgent: [
    { where: 'PLAN', gives: () => testsFor('urgent', 6) / 1.1 - 6 },
    { where: 'PLAN, the words', gives: () => 24 / numberIn(planWords({ pace: 'urgent' }), /test every (\d+) hours/) },
  ],
  spareTests: [{ where: 'PLAN', gives: () => testsFor('gradual', 9992) / 10_000 - 1 }],
};
