import type { Task, TestReason } from '../audit/task.js';
import { columnsOf, type Table, type TableCell } from '../result/table.js';
import * as limits from '../limits/limits.js';
import { shownNumber } from '../units/shown.js';

export const doNowColumns = columnsOf({ Do: 'text', Amount: 'number', Unit: 'text', By: 'time', Why: 'text' });

/** What to do now, as DONOW spills it. */
export function doNowTable(tasks: readonly Task[], now: number): Table {
  return { columns: doNowColumns, rows: tasks.map((task) => taskRow(task, now)) };
}

const level = (x: number): string => (x === Infinity ? 'over the top of the test' : shownNumber(Number(x.toFixed(3))));

function taskRow(task: Task, now: number): readonly TableCell[] {
  switch (task.kind) {
    case 'mend':
      return ['fix the log', '', '', now, `row ${task.row} cannot be read; QT.AUDIT says why`];
    case 'test':
      return ['test copper', '', '', task.by, testReason(task.because)];
    case 'test fish water':
    case 'lower and wait':
    case 'raise slowly':
    case 'stop copper':
      return [...forTheFish[task.kind].slice(0, 1), '', '', now, ...forTheFish[task.kind].slice(1)];
    case 'dose':
      return ['dose', task.millilitres, 'mL', now, doseReason(task)];
    case 'no copper':
    case 'ask first':
      return [...againstCopper[task.kind].slice(0, 1), '', '', now, `${task.fish}: ${againstCopper[task.kind][1]}`];
    case 'strength missing':
      return ['write the strength on the card', '', 'mg/mL', now, noStrength];
    case 'change':
      return ['change water', task.litres, 'L', now, changeReason(task)];
    case 'next test':
      return ['test copper', '', '', task.by, `the next daily test; the last read ${level(task.level)} mg/L`];
    case 'days left':
      return ['hold', task.days, 'days left', task.by, `${daysDone(task.held)} days done, if no reading falls below`];
    case 'held enough':
      return ['see QT.READY', '', '', now, heldReason(task.held)];
  }
}

/** What signs call for, and why. */
const forTheFish = {
  'test fish water': [
    'test ammonia, oxygen and copper',
    'first signs: disease, ammonia and copper look the same (common practice)',
  ],
  'lower and wait': [
    'lower copper and wait',
    'signs go on: if ammonia is nil, lower with copper-free water until the fish eats; below the band the hold breaks',
  ],
  'raise slowly': [
    'raise slowly',
    'the fish has recovered: raise again in small doses, testing before each (common practice)',
  ],
  'stop copper': [
    'stop copper',
    'signs came back: take copper out, use another treatment; an aquatic veterinarian decides',
  ],
} as const;

/** About a fish that copper kills, or that should be kept away from it. */
const againstCopper = {
  'no copper': ['no copper', 'never with copper, see QT.TOLERANCE; move it out first; an aquatic veterinarian decides'],
  'ask first': ['ask before dosing', 'to be kept away from copper, see QT.TOLERANCE; an aquatic veterinarian decides'],
} as const;

const noStrength = 'a dose is due, but its mL cannot be computed without the strength; see QT.STRENGTH';

function doseReason({ from, to, raising }: Extract<Task, { kind: 'dose' }>): string {
  const where = raising ? 'below the band' : 'close to the low limit';
  return `${where}: from ${level(from)} to ${level(to)} mg/L; test ${limits.mixing.value} h after, before any other dose`;
}

function changeReason({ from, to }: Extract<Task, { kind: 'change' }>): string {
  return `above the band at ${level(from)}: copper-free water brings it to ${level(to)} mg/L; test after mixing`;
}

function heldReason(held: number): string {
  return `held ${daysDone(held)} days without a break: copper may come out, fish may move once every gate is met`;
}

/** Days rounded down to two decimals. */
function daysDone(held: number): string {
  return shownNumber(Math.floor(held * 100) / 100);
}

function testReason(because: TestReason): string {
  switch (because.kind) {
    case 'no reading':
      return 'there is no reading yet: nothing can be dosed on an untested level';
    case 'too old':
      return `the last test is ${because.hours.toFixed(1)} h old, more than ${because.limit} h: nothing is computed on it`;
    case 'dosed since':
      return `a dose was given since the last test: let it mix ${limits.mixing.value} h, then test`;
    case 'no one level':
      return 'the last reading does not show whether the level is in the band: use a test that shows the level itself';
    case 'changed since':
      return 'water was changed since the last test';
  }
}
