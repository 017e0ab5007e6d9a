import type { Task, TestReason } from '../audit/task.js';
import type { Table, TableCell } from '../result/table.js';
import { shownNumber } from '../units/shown.js';

/** What to do now, as DONOW spills it. */
export function doNowTable(tasks: readonly Task[], now: number): Table {
  return { heading: ['Do', 'Amount', 'Unit', 'By', 'Why'], rows: tasks.map((task) => taskRow(task, now)) };
}

const level = (x: number): string => (x === Infinity ? 'over the top of the test' : shownNumber(Number(x.toFixed(3))));

function taskRow(task: Task, now: number): readonly TableCell[] {
  switch (task.kind) {
    case 'mend':
      return ['mend the log', '', '', now, `row ${task.row} cannot be read: QT.AUDIT says why`];
    case 'test':
      return ['test copper', '', '', task.by, testReason(task.because)];
    case 'test fish water':
      return [
        'test ammonia, oxygen and copper',
        '',
        '',
        now,
        'first signs: disease, ammonia and copper look the same (common practice)',
      ];
    case 'lower and wait':
      return [
        'lower copper and wait',
        '',
        '',
        now,
        'signs go on: if ammonia is nil, lower with copper-free water until the fish eats; below the band the hold breaks',
      ];
    case 'raise slowly':
      return [
        'raise slowly',
        '',
        '',
        now,
        'the fish has recovered: raise again in small doses, testing before each (common practice)',
      ];
    case 'stop copper':
      return [
        'stop copper',
        '',
        '',
        now,
        'signs came back: take copper out, use another treatment; an aquatic veterinarian decides',
      ];
    case 'dose':
      return [
        'dose',
        task.millilitres,
        'mL',
        now,
        `${task.raising ? 'below the band' : 'close to the low limit'}: from ${level(task.from)} to ${level(task.to)} mg/L; test 2 h after, before any other dose`,
      ];
    case 'strength missing':
      return [
        'write the strength on the card',
        '',
        'mg/mL',
        now,
        'a dose is due, and its mL cannot be computed without the strength; see QT.STRENGTH',
      ];
    case 'change':
      return [
        'change water',
        task.litres,
        'L',
        now,
        `above the band at ${level(task.from)}: copper-free water brings it to ${level(task.to)} mg/L; test after mixing`,
      ];
    case 'next test':
      return ['test copper', '', '', task.by, `the next daily test; the last read ${level(task.level)} mg/L`];
    case 'days left':
      return [
        'hold',
        task.days,
        'days left',
        task.by,
        `${shownNumber(Math.floor(task.held * 100) / 100)} days done, if no reading falls below`,
      ];
    case 'held enough':
      return [
        'see QT.READY',
        '',
        '',
        now,
        `held ${shownNumber(Math.floor(task.held * 100) / 100)} days without a break: copper may come out, fish may move once every gate is met`,
      ];
  }
}

function testReason(because: TestReason): string {
  switch (because.kind) {
    case 'no reading':
      return 'there is no reading yet: nothing can be dosed on an untested level';
    case 'too old':
      return `the last test is ${because.hours.toFixed(1)} h old, more than ${because.limit} h: nothing is computed on it`;
    case 'dosed since':
      return 'a dose was given since the last test: let it mix 2 h, then test';
    case 'changed since':
      return 'water was changed since the last test';
  }
}
