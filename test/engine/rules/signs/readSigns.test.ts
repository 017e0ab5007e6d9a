import { readSigns } from '../../../../src/engine/rules/signs/readSigns.js';
import type { Cell } from '../../../../src/engine/units/cell.js';

const column = (...cells: Cell[]): Cell[][] => cells.map((cell) => [cell]);
const cellOf = (raw: unknown): Cell => (raw === undefined ? null : (raw as Cell));
const read = (when: Cell[][], signs: Cell[][]) => readSigns({ when, signs, cellOf });

describe('readSigns', () => {
  it('takes times as they are written, and leaves out blank cells, whatever stands for them', () => {
    expect(
      read(
        column(46082, '2026-03-02 08:00', 46084, 46085, 46086, 46087),
        column('not eating', ' eating ', null, '', 0, '–'),
      ),
    ).toEqual({
      ok: true,
      value: [
        { when: 46082, row: 1, text: 'not eating' },
        { when: 46083 + 8 / 24, row: 2, text: 'eating' },
      ],
    });
  });

  it('keeps numbers and logical values as texts', () => {
    const texts = read(column(46082, 46083, 46084, 46085), column('none seen', 12, true, '0'));
    expect(texts.ok && texts.value.map(({ text }) => text)).toEqual(['none seen', '12', 'TRUE', '0']);
  });

  it.each(['none', 'None', ' nil ', 'N/A', 'n/a', 'na', '-', '--', ' '])('takes %j for a blank', (text) => {
    expect(read(column(46082, null), column(text, text))).toEqual({ ok: true, value: [] });
  });

  it('leaves out a row of headings, which counts', () => {
    const expected = { ok: true, value: [{ when: 46082, row: 2, text: 'eating' }] };
    expect(read(column('Date', 46082), column('Eating', 'eating'))).toEqual(expected);
    expect(read(column(null, 46082), column('Signs', 'eating'))).toEqual(expected);
    expect(read(column('When', 46082), column(null, 'eating'))).toEqual(expected);
  });

  it('reads a date and its time of day from two columns, and rows as well as columns', () => {
    expect(read([[46082, '9:30 PM']], column('flashing'))).toMatchObject({ value: [{ when: 46082 + 21.5 / 24 }] });
    expect(read([[46082, 46083]], [['flashing', 'fine']])).toMatchObject({ value: [{ when: 46082 }, { when: 46083 }] });
  });

  it.each([
    [
      'a text without a time',
      column(null, 46082),
      column('eating', 'eating'),
      { code: 'text-without-time', row: 1, given: '"eating"' },
    ],
    ['a time that is none', column('soon'), column('eating'), { code: 'not-a-time', at: { row: 1 } }],
    ['a time without a date', [[null, '08:00']], column('eating'), { code: 'time-without-date', at: { row: 1 } }],
    [
      'an error cell',
      column(46082, 46083),
      column('fine', { error: '#N/A' }),
      { code: 'error-cell', at: { row: 2 }, given: '#N/A' },
    ],
    [
      'ranges of other lengths',
      column(46082, 46083),
      column('fine'),
      { code: 'unequal-ranges', firstCells: 2, secondCells: 1 },
    ],
    [
      'a block of signs',
      column(46082),
      [
        ['fine', 'fine'],
        ['fine', 'fine'],
      ],
      { code: 'not-a-line', field: 'signs' },
    ],
  ])('refuses %s', (_, when, signs, problem) => {
    expect(read(when, signs)).toMatchObject({ ok: false, problem });
  });
});
