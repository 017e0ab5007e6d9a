import { deathsByLot } from '../../../src/engine/audit/deathsByLot.js';
import { readyGates } from '../../../src/engine/audit/readyGates.js';
import { holdDays as daysOfHold } from '../../../src/engine/hold/holdDays.js';
import { readyTable } from '../../../src/engine/text/readyTable.js';
import { days } from '../../../src/engine/units/quantity.js';
import {
  atDay,
  atHour,
  audited,
  chelated,
  findingOf,
  gateOf,
  log,
  noStrength,
  numberIn,
  planned,
  planWords,
  rowsDaily,
  stepOf,
  treated,
  wordsOf,
  type Edges,
} from './edge.js';

const low = 1.95;

/** A hold with a stretch of so many hours between two of its tests. */
const gap = (hours: number): string =>
  log('Cu', [atHour(0), 2.25], [atHour(24), 2.25], [atHour(24 + hours), 2.25], [atHour(48 + hours), 2.25]);

/** Fifteen days of a hold with a stretch without a test in the middle, and a move on the last. */
const moveAfterGap = (hours: number): string =>
  log(
    'Cu|fish out|signs|dead',
    ...rowsDaily(0, 5, 2.25, '', 'eating well', 0),
    [atHour(5 * 24 + hours), 2.25, '', 'eating well', 0],
    ...rowsDaily(8, 14, 2.25, '', 'eating well', 0),
    [atDay(15), 2.25, '1 firefish', 'eating well', 0],
  );

/** A hold of so many days in a log where nothing else speaks against a move. */
const heldFor = (length: number): string =>
  log('Cu|signs|dead', ...rowsDaily(0, Math.floor(length - 0.5), 2.25, 'eating well', 0), [
    atDay(length),
    2.25,
    'eating well',
    0,
  ]);

const moveWords = (words: RegExp): number =>
  numberIn(wordsOf(findingOf(treated(moveAfterGap(60)), 'moved-against-terms')), words);

const sign = (daysBefore: number): string =>
  log(
    'Cu|fish out|signs|dead',
    ...rowsDaily(0, 7, 2.25, '', '', 0),
    [atDay(15 - daysBefore), 2.25, '', 'lethargic', 0],
    [atDay(15 - daysBefore + 0.25), 2.25, '', 'eating well, all normal', 0],
    ...rowsDaily(10, 14, 2.25, '', '', 0),
    [atDay(15), 2.25, '1 firefish', 'eating well', 0],
  );

export const holdEdges: Edges<
  | 'holdDays'
  | 'longestGap'
  | 'creditedGap'
  | 'notedGap'
  | 'warnedGap'
  | 'nearlyHeld'
  | 'copperOut'
  | 'copperLeaving'
  | 'dayCountOff'
  | 'publishedCourse'
  | 'shortCourse'
  | 'transferDays'
  | 'transferGap'
  | 'quietDays'
  | 'farOverTop'
  | 'signBeside'
> = {
  holdDays: [
    {
      where: 'PLAN, a short course',
      gives: () => numberIn(planWords({ days: days(10) }), /is a short course; plan (\d+)/),
    },
    {
      where: 'PLAN, why it is short',
      gives: () => numberIn(planWords({ days: days(10) }), /counted as short; (\d+) days is common/),
    },
    { where: 'a card without days', gives: () => treated(gap(24)).card.days },
    {
      where: 'PLAN, why a shorter course',
      gives: () => numberIn(planWords({ days: days(10) }), /; (\d+) days is common/),
    },
    {
      where: 'PLAN, which course it is',
      answer: (value) => /public aquaria held/.test(planWords({ days: days(value) })),
      step: 1,
      with: 'above',
    },
  ],
  longestGap: [
    {
      where: 'AUDIT',
      answer: (value) => audited(treated(gap(value)), 'restarted-untested'),
      step: 0.01,
      with: 'below',
    },
    { where: 'PLAN', gives: () => numberIn(planWords(), /no stretch untested for over (\d+) h/) },
    { where: 'PLAN, why test', gives: () => numberIn(planWords(), /over (\d+) h the hold starts again/) },
  ],
  creditedGap: [
    {
      where: 'HOLDDAYS',
      gives: () => {
        const { trace, terms } = treated(gap(24), chelated, atDay(30));
        const held = daysOfHold(trace, terms);
        return held.ok ? 24 * (held.value - 3) : NaN;
      },
    },
    {
      where: 'AUDIT, days to the row that stops the copper',
      gives: () =>
        24 *
        (findingOf(
          treated(log('Cu|note', ...rowsDaily(0, 5, 2.25, ''), [atDay(9), '', 'copper removed'])),
          'stopped-short',
        ).days -
          5),
    },
  ],
  notedGap: [
    {
      where: 'AUDIT, the words where there is none',
      gives: () =>
        numberIn(wordsOf(findingOf(treated(gap(24)), 'verdict-untested')), /No untested stretch of over (\d+) h/),
    },
    { where: 'AUDIT', answer: (value) => audited(treated(gap(value)), 'untested-noted'), step: 0.01, with: 'below' },
    {
      where: 'AUDIT, a stretch that has not ended',
      answer: (value) =>
        audited(treated(log('Cu', ...rowsDaily(0, 3, 2.25)), chelated, atHour(72 + value)), 'untested-noted'),
      step: 0.01,
      with: 'below',
    },
    {
      where: 'AUDIT, the words',
      gives: () => numberIn(wordsOf(findingOf(treated(gap(40)), 'untested-noted')), /of (\d+) to 72 h/),
    },
    {
      where: 'AUDIT, the verdict’s words',
      gives: () => numberIn(wordsOf(findingOf(treated(gap(40)), 'verdict-untested')), /of over (\d+) h/),
    },
    { where: 'PLAN', gives: () => numberIn(planWords(), /over (\d+) h untested is noted/) },
  ],
  warnedGap: [
    { where: 'AUDIT', answer: (value) => audited(treated(gap(value)), 'untested-stretch'), step: 0.01, with: 'above' },
    {
      where: 'AUDIT, the words',
      gives: () => numberIn(wordsOf(findingOf(treated(gap(80)), 'untested-stretch')), /: (\d+) h are warned of/),
    },
  ],
  nearlyHeld: [
    {
      where: 'AUDIT',
      answer: (value) =>
        audited(
          treated(log('Cu|note', ...rowsDaily(0, 28, 2.25, ''), [atDay(30 - value), 2.25, 'copper removed'])),
          'stopped-short',
        ),
      step: 0.001,
      with: 'above',
    },
  ],
  copperOut: [
    {
      where: 'AUDIT',
      answer: (value) =>
        audited(
          // Doses without a strength: without a model of the level no slip of the pen is seen in it.
          treated(
            log('Cu|dose', [atDay(0), 2.25, 1], ...rowsDaily(1, 9, 2.25, ''), [atDay(10), low * value, '']),
            noStrength,
          ),
          'stopped-short',
        ),
      step: 0.001,
      with: 'above',
    },
  ],
  copperLeaving: [
    {
      where: 'AUDIT',
      answer: (value) =>
        audited(
          treated(log('Cu', ...rowsDaily(0, 9, 2.25), [atDay(10), 1.3], [atDay(11), low * value])),
          'stopped-short',
        ),
      step: 0.001,
      with: 'above',
    },
    {
      where: 'DEATHS, the phase',
      answer: (value) => {
        const rows = deathsByLot(
          treated(
            log('Cu|fish in|dead', [atDay(0), 2.25, '9 chromis', 0], ...rowsDaily(1, 9, 2.25, '', 0), [
              atDay(10),
              low * value,
              '',
              1,
            ]),
          ),
        );
        return rows.ok ? rows.value[0]?.observation : rows.problem;
      },
      step: 0.001,
      with: 'above',
    },
  ],
  dayCountOff: [
    {
      where: 'AUDIT',
      answer: (value) =>
        audited(
          treated(log('Cu|hold day', [atDay(0), 2.25, 1], [atDay(1), 2.25, 2], [atDay(2), 2.25, 3 + value])),
          'own-day-count',
        ),
      step: 0.01,
      with: 'below',
    },
  ],
  publishedCourse: [
    {
      where: 'READY',
      answer: (value) => gateOf(treated(gap(72), `${chelated}\ndays|${value}`, atHour(120)), 'no untested stretch').met,
      step: 1,
      with: 'above',
    },
    {
      where: 'PLAN, which course it is',
      answer: (value) => /shorter than the 21 days/.test(planWords({ days: days(value) })),
      step: 1,
      with: 'above',
    },
    {
      where: 'PLAN, the words',
      gives: () => numberIn(planWords({ days: days(18) }), /shorter than the (\d+) days/),
    },
  ],
  shortCourse: [
    {
      where: 'PLAN, why it is short',
      gives: () => numberIn(planWords({ days: days(10) }), /courses under (\d+) days were counted/),
    },
    {
      where: 'PLAN',
      answer: (value) => planned({ days: days(value) }).some(({ code }) => code === 'short-course'),
      step: 1,
      with: 'above',
    },
    {
      where: 'PLAN, which course it is',
      answer: (value) => /short: .* counted courses/.test(planWords({ days: days(value) })),
      step: 1,
      with: 'above',
    },
    {
      where: 'PLAN, the words',
      gives: () => numberIn(planWords({ days: days(10) }), /counted courses under (\d+) days so/),
    },
  ],
  transferDays: [
    { where: 'PLAN, why move', gives: () => numberIn(planWords(), /practice: (\d+) days, beyond/) },
    {
      where: 'AUDIT',
      answer: (value) =>
        audited(
          treated(log('Cu|fish out', ...rowsDaily(0, 13, 2.25, ''), [atDay(value), 2.25, '1 firefish'])),
          'moved-early',
        ),
      step: 0.001,
      with: 'above',
    },
    {
      where: 'AUDIT, the days before a move that may not be untested',
      answer: (value) =>
        audited(
          treated(
            log(
              'Cu|fish out',
              ...rowsDaily(0, 5, 2.25, ''),
              [atDay(20 - value + 2), 2.25, ''],
              ...rowsDaily(9, 19, 2.25, ''),
              [atDay(20), 2.25, '1 firefish'],
            ),
          ),
          'moved-against-terms',
        ),
      step: 0.001,
      with: 'above',
    },
    {
      where: 'READY',
      answer: (value) => readyGates(treated(heldFor(value), chelated, atDay(value))).mayTransfer,
      step: 0.001,
      with: 'above',
    },
    {
      where: 'READY, the tested days',
      answer: (value) =>
        readyGates(
          treated(
            log(
              'Cu|signs|dead',
              [atDay(0), 2.25, '', 0],
              [atDay(3), 2.25, 'eating well', 0],
              ...rowsDaily(4, 16, 2.25, 'eating well', 0),
              [atDay(3 + value), 2.25, 'eating well', 0],
            ),
            chelated,
            atDay(3 + value),
          ),
        ).mayTransfer,
      step: 0.001,
      with: 'above',
    },
    {
      where: 'PLAN',
      answer: (value) => planned({ days: days(value) }).some(({ code }) => code === 'transfer'),
      step: 1,
      with: 'above',
    },
    { where: 'AUDIT, the words of terms', gives: () => moveWords(/After (\d+) days only/) },
    {
      where: 'READY, the words',
      gives: () =>
        numberIn(readyTable(readyGates(treated(heldFor(16), chelated, atDay(16)))).rows.join(), /have had (\d+) days/),
    },
    {
      where: 'PLAN, its day',
      gives: () => stepOf(planned(), 'transfer').when - stepOf(planned(), 'hold-begins').when,
    },
    {
      where: 'AUDIT, the words',
      gives: () =>
        numberIn(
          wordsOf(
            findingOf(
              treated(log('Cu|fish out', ...rowsDaily(0, 3, 2.25, ''), [atDay(4), 2.25, '1 tang'])),
              'moved-early',
            ),
          ),
          /after (\d+) unbroken/,
        ),
    },
  ],
  transferGap: [
    {
      where: 'PLAN, the words of a move',
      gives: () => numberIn(planWords(), /untested for over (\d+) h and the last/),
    },
    {
      where: 'AUDIT',
      answer: (value) => audited(treated(moveAfterGap(value)), 'moved-against-terms'),
      step: 0.01,
      with: 'below',
    },
    {
      where: 'READY, between tests',
      answer: (value) =>
        readyGates(treated(moveAfterGap(value).replace('|1 firefish|', '||'), chelated, atDay(15))).mayTransfer,
      step: 0.01,
      with: 'below',
    },
    {
      where: 'READY, since the last',
      answer: (value) => readyGates(treated(heldFor(16), chelated, atHour(16 * 24 + value))).mayTransfer,
      step: 0.01,
      with: 'below',
    },
    {
      where: 'READY, the gate of a short hold',
      answer: (value) =>
        gateOf(treated(gap(value), `${chelated}\ndays|14`, atHour(72 + value)), 'no untested stretch').met,
      step: 0.01,
      with: 'below',
    },
    {
      where: 'AUDIT, the words',
      gives: () => moveWords(/untested for over (\d+) h/),
    },
    { where: 'PLAN', gives: () => numberIn(planWords(), /over (\d+) h rules out/) },
  ],
  quietDays: [
    {
      where: 'PLAN, the words of a move',
      gives: () => numberIn(planWords(), /the last (\d+) days were without signs/),
    },
    {
      where: 'AUDIT',
      answer: (value) => audited(treated(sign(value)), 'moved-against-terms'),
      step: 0.001,
      with: 'above',
    },
    {
      where: 'READY, signs',
      answer: (value) => gateOf(treated(sign(value), chelated, atDay(15)), 'signs').met,
      step: 0.001,
      with: 'above',
    },
    {
      where: 'READY, deaths',
      answer: (value) =>
        gateOf(
          treated(
            log('Cu|dead', ...rowsDaily(0, 5, 2.25, 0), [atDay(15 - value), 2.25, 1], ...rowsDaily(10, 15, 2.25, 0)),
            chelated,
            atDay(15),
          ),
          'deaths',
        ).met,
      step: 0.001,
      with: 'above',
    },
    { where: 'AUDIT, the words', gives: () => moveWords(/the last (\d+) were without signs/) },
    { where: 'PLAN, when to watch', gives: () => stepOf(planned(), 'transfer').when - stepOf(planned(), 'watch').when },
    { where: 'PLAN, the words', gives: () => numberIn(planWords(), /needs the (\d+) days before it/) },
  ],
  farOverTop: [
    {
      where: 'AUDIT',
      answer: (value) =>
        audited(treated(log('Cu', ...rowsDaily(0, 5, 2.5), [atDay(6), 2.55 * value], [atDay(7), 2.5])), 'above-band'),
      step: 0.001,
      with: 'below',
    },
    {
      where: 'AUDIT, the words',
      gives: () =>
        /over a tenth/.test(wordsOf(findingOf(treated(log('Cu', [atDay(0), 2.5], [atDay(1), 2.9])), 'above-band')))
          ? 1.1
          : NaN,
    },
  ],
  signBeside: [
    {
      where: 'AUDIT, a sign before',
      answer: (value) =>
        audited(
          treated(
            log(
              'Cu|signs',
              ...rowsDaily(0, 5, 2.5, ''),
              [atDay(8 - value), '', 'lethargic'],
              [atDay(8), 2.7, ''],
              [atDay(9), 2.5, ''],
            ),
            noStrength,
          ),
          'above-band',
        ),
      step: 0.001,
      with: 'below',
    },
    {
      where: 'AUDIT, a sign after',
      answer: (value) =>
        audited(
          treated(
            log(
              'Cu|signs',
              ...rowsDaily(0, 5, 2.5, ''),
              [atDay(8), 2.7, ''],
              [atDay(8 + value), '', 'lethargic'],
              [atDay(10), 2.5, ''],
            ),
            noStrength,
          ),
          'above-band',
        ),
      step: 0.001,
      with: 'below',
    },
  ],
};
