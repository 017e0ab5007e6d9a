import { readdirSync, readFileSync } from 'node:fs';
import { examples } from '../../functions/examples.js';
import { answerColumns, answerKind } from '../../src/engine/index.js';
import type { AnswerKind, TableColumn } from '../../src/engine/result/table.js';
import { doseSplitTable } from '../../src/engine/text/doseTables.js';
import { standInHost, type Answer, type ArgumentIn, type Scalar } from '../host/standInHost.js';
import { callIn } from './callIn.js';

const host = standInHost();

/** From 1950 to 2100: the examples and logs below lie there, and a number of anything else does not. */
const isSerial = (cell: Scalar): boolean => typeof cell === 'number' && cell > 18264 && cell < 73416;
const holds: Readonly<Record<AnswerKind, (cell: Scalar) => boolean>> = {
  time: isSerial,
  number: (cell) => typeof cell === 'number' && !isSerial(cell),
  text: (cell) => typeof cell !== 'number',
  share: (cell) => typeof cell === 'number' && cell >= 0 && cell <= 1,
  mixed: () => true,
};

/** Cells that are not of their column's kind; '' fits everywhere, and `none` stands where there is nothing to list. */
function misfits(columns: readonly TableColumn[], rows: readonly (readonly Scalar[])[]): string[] {
  const [only = []] = rows;
  if (rows.length === 1 && only.every((cell, at) => cell === (at === 0 ? 'none' : ''))) return [];
  return rows.flatMap((row) =>
    columns.flatMap(({ heading, kind }, at) => {
      const cell = row[at] ?? '';
      return cell === '' || holds[kind](cell) ? [] : [`${heading}: ${cell}`];
    }),
  );
}

function check(id: string, answer: Answer): void {
  const expected = answerColumns[id];
  if (expected === undefined) throw new Error(`${id} has no columns`);
  if (typeof expected === 'string') {
    const cells = Array.isArray(answer) ? answer.flat() : [answer as Scalar];
    expect(cells.filter((cell) => cell !== '' && !holds[expected](cell))).toEqual([]);
    return;
  }
  if (!Array.isArray(answer)) throw new Error(`${id} gives ${JSON.stringify(answer)}`);
  const [heading, ...rows] = answer;
  const columns = id === 'DOSESPLIT' && heading?.[0] === 'Hours' ? doseSplitTable([], undefined).columns : expected;
  expect(heading).toEqual(columns.map((column) => column.heading));
  // Some of the published values are serials: numbers to compare, not times of anything.
  const listed = id === 'SELFCHECK' ? rows.filter(([name]) => !/^serial/i.test(String(name))) : rows;
  expect(misfits(columns, listed)).toEqual([]);
}

describe('the columns of answers', () => {
  it('are stated for every cell function, and no other', () => {
    expect(Object.keys(answerColumns).sort()).toEqual(host.metadata.functions.map(({ id }) => id).sort());
  });

  it.each(examples.map(({ name, formula }) => [name, formula] as const))('%s fit its example', (name, formula) => {
    check(name, host.call(name, ...(callIn(formula).given as ArgumentIn[])));
  });

  it('are times in DOSESPLIT where the first dose has a time', () => {
    const answer = host.call('DOSESPLIT', 9.5, 4, null, 46082.5);
    expect(Array.isArray(answer) && answer[0]?.[0]).toBe('When');
    check('DOSESPLIT', answer);
    expect(answerKind('DOSESPLIT', 'When')).toBe('time');
    expect(answerKind('DOSESPLIT', 'Hours')).toBeUndefined();
  });

  it('know a count of 46,000 fish from a day of 2026', () => {
    expect(answerKind('DEATHS', 'Came in')).toBe('number');
    expect(answerKind('HOLDSTART')).toBe('time');
    expect(misfits([{ heading: 'When', kind: 'time' }], [[3]])).toEqual(['When: 3']);
    expect(misfits([{ heading: 'Days', kind: 'number' }], [['3 days']])).toEqual(['Days: 3 days']);
    expect(misfits([{ heading: 'Why', kind: 'text' }], [[3]])).toEqual(['Why: 3']);
  });
});

describe('of a log with everything in it', () => {
  const log: ArgumentIn = [
    ['Date', 'Cu ppm', 'Dose mL', 'WC gal', 'Fish in', 'Dead', 'Signs', 'Note', 'Lot', 'Tank', 'pH', 'NH3'],
    ['2026-03-01 08:00', '<0.05', 40, '', '4 chromis', '1 DOA', '', '', 'A', 'north', 8.1, 0],
    ['2026-03-02 08:00', 'LOW', 40, '', '', '', 'not eating', '', '', 'north', 8.2, 0.4],
    ['2026-03-03 08:00', 2.1, '', '', '', '', 'eating again', 'praziquantel', '', 'north', '', ''],
    ['2026-03-08 08:00', 1.8, '', 10, '2 tangs', '1 chromis', 'gasping', '', 'B', 'north', '', ''],
    ['2026-03-09 08:00', 2.9, '', 5, '', '', '', '5 L topped off', '', 'north', '', ''],
    ['2026-04-09 08:00', 2.3, '', '', '', '', '', 'copper out', '', 'north', '', ''],
  ];
  const card: ArgumentIn = [
    ['Volume', 200],
    ['Form', 'chelated'],
    ['Strength', 10],
    ['Fish', 'foxface'],
    ['Start', '2026-03-01'],
    ['Arrived', 46082],
    ['Longest gap', 'none'],
    ['Meter from', 0.05],
    ['Flavour', 3],
  ];
  const cards: ArgumentIn = [
    ['System', 'Volume', 'Form', 'Strength'],
    ['north', 200, 'chelated', 10],
    ['south', 100, 'chelated', 10],
  ];
  const readable = (log as Scalar[][]).map((row) => row.map((cell) => (cell === 'LOW' ? '' : cell)));
  const moment = 46121.5;
  const questions: readonly (readonly [string, readonly ArgumentIn[]])[] = [
    ['HEADINGS', [log]],
    ['CARD', [card]],
    ['LEVELS', [readable, card]],
    ['AUDIT', [log, card, moment]],
    ['DONOW', [log, card, moment]],
    ['DONOW', [readable, card, 46084.5]],
    ['READY', [log, card, moment]],
    ['FISHDAYS', [readable, card, moment]],
    ['DEATHS', [readable, card]],
    ['SYSTEMS', [log, cards, moment]],
    ['NOTES', [log]],
  ];
  it.each(questions)('%s gives what its columns say', (id, args) => check(id, host.call(id, ...args)));
});

/** What the comment of each wrapper says it returns. */
const returned = new Map(
  readdirSync('functions').flatMap((file) =>
    [...readFileSync(`functions/${file}`, 'utf8').matchAll(/@customfunction (\w+)\n[^]*?@returns (.*)\n/g)].map(
      ([, id = '', text = '']) => [id, text] as const,
    ),
  ),
);

describe('the comment of a cell function', () => {
  it('is found for each', () => {
    expect([...returned.keys()].sort()).toEqual(Object.keys(answerColumns).sort());
  });

  it.each(Object.entries(answerColumns))('%s returns what its columns say', (id, columns) => {
    const text = returned.get(id) ?? '';
    if (typeof columns === 'string') return expect(text).not.toMatch(/table/i);
    const [first = '', ...others] = columns.map(({ heading }) => heading);
    const list = [id === 'DOSESPLIT' ? `${first} (or Hours)` : first, ...others].join(', ');
    return expect(text).toBe(`Table with heading${others.length === 0 ? '' : 's'}: ${list}.`);
  });
});
