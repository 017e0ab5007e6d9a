import { readReadings } from '../../../src/engine/log/readReadings.js';
import type { RawRange } from '../../../src/engine/log/parallelRanges.js';
import type { Cell } from '../../../src/engine/units/cell.js';

const cellOf = (raw: unknown): Cell => (raw === undefined ? null : (raw as Cell));
const read = (when: RawRange, copper: RawRange) => readReadings({ when, copper, cellOf });
const column = (...cells: unknown[]): RawRange => cells.map((cell) => [cell]);

function entries(when: RawRange, copper: RawRange) {
  const result = read(when, copper);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  const { count, when: times, low, row } = result.value;
  return Array.from({ length: count }, (_, index) => [row[index], times[index], low[index]]);
}

describe('readReadings', () => {
  it('reads a column of times and a column of readings, rows counted from 1', () => {
    expect(entries(column(46082, '2026-03-02 12:00'), column(2.1, '2,05 ppm'))).toEqual([
      [1, 46082, 2.1],
      [2, 46083.5, 2.05],
    ]);
  });

  it('reads rows as well as columns', () => {
    expect(entries([[46082, 46083]], [[2.1, 2.2]])).toHaveLength(2);
    expect(entries([[46082, 46083]], column(2.1, 2.2))).toHaveLength(2);
  });

  it('leaves out a first row of headings but counts it', () => {
    expect(entries(column('Date', 46082), column('Copper (mg/L)', 2.1))).toEqual([[2, 46082, 2.1]]);
    expect(entries(column('Timestamp', 46082), column('Lvl mg/L', 2.1))).toEqual([[2, 46082, 2.1]]);
    expect(entries(column('When', 46082), column('', 2.1))).toEqual([[2, 46082, 2.1]]);
    expect(read(column(46081, 46082), column('Copper', 2.1))).toMatchObject({
      problem: { code: 'not-a-reading', at: { row: 1 } },
    });
    expect(read(column(46081, 'Date'), column(2, 'Copper'))).toMatchObject({ problem: { at: { row: 2 } } });
  });

  it('adds date and time of day from two columns', () => {
    const when = [
      ['Date', 'Time'],
      [46082, 0.25],
      [46083, '08:00'],
      ['2026-03-03', '9:30 PM'],
      [46085, '0900'],
      [46086, '16.00'],
      [46087, null],
      [46088.5, null],
    ];
    const minutes = entries(when, column('Cu', 1, 2, 3, 4, 5, 6, 7)).map(([row, time]) => [
      row,
      Math.round(Number(time) * 1440) / 1440,
    ]);
    expect(minutes).toEqual([
      [2, 46082.25],
      [3, 46083 + 8 / 24],
      [4, 46084 + 21.5 / 24],
      [5, 46085.375],
      [6, 46086 + 16 / 24],
      [7, 46087],
      [8, 46088.5],
    ]);
    expect(entries([[46082, 0.5]], [[2.1]])).toEqual([[1, 46082.5, 2.1]]);
  });

  it('leaves out empty rows and days without a test', () => {
    const when = column(46082, null, 46083, 46084, 0, '', 46085, 46086);
    const copper = column(2.1, null, '', 'none', 0, '  ', '-', 'void 1.62');
    expect(entries(when, copper)).toEqual([[1, 46082, 2.1]]);
  });

  it('puts rows in time order, rows of one instant as they stand', () => {
    expect(entries(column(46084, 46082, 46083, 46082), column(1, 2, 3, 4)).map(([row]) => row)).toEqual([2, 4, 3, 1]);
  });

  it('keeps what a level alone does not say', () => {
    const result = read(column(46082, 46083, 46084), column('2.0-2.25', '~2.1', 2.2));
    expect(result.ok && [...result.value.odd]).toEqual([
      [1, { kind: 'level', low: 2, high: 2.25, approximate: false }],
      [2, { kind: 'level', low: 2.1, high: 2.1, approximate: true }],
    ]);
  });

  it('tells a 0 that was read from one that may be an empty cell', () => {
    const zeros = (when: RawRange, copper: RawRange) => {
      const result = read(when, copper);
      return result.ok && { zeroRows: result.value.zeroRows, hasBlanks: result.value.hasBlanks };
    };
    expect(zeros(column(46082, 46083), column(2.1, 0))).toEqual({ zeroRows: [2], hasBlanks: false });
    expect(zeros(column(46082, 46083), column(2.1, '0 mg/L'))).toEqual({ zeroRows: [], hasBlanks: false });
    expect(zeros(column(46082, 46083, null), column(2.1, 0, null))).toEqual({ zeroRows: [2], hasBlanks: true });
  });

  it.each<[RawRange, RawRange, object]>([
    [column(46082, 46083), column(2.1), { code: 'unequal-ranges', firstCells: 2, secondCells: 1 }],
    [
      column(46082),
      [
        [1, 2],
        [3, 4],
      ],
      { code: 'not-a-line', field: 'copper', rows: 2, columns: 2 },
    ],
    [
      [
        [1, 2, 3],
        [1, 2, 3],
      ],
      column(1, 2),
      { code: 'not-a-line', field: 'when' },
    ],
    [column(46082, 46083, 'x'), column(2.1, 'LOW', 'x'), { code: 'not-a-reading', at: { row: 2 }, given: '"LOW"' }],
    [column(46082, null), column(2.1, 2.2), { code: 'reading-without-time', row: 2, given: '2.2' }],
    [column(46082, 0), column(2.1, 2.2), { code: 'reading-without-time', row: 2 }],
    [column(46082, 0.5), column(2.1, 2.2), { code: 'time-without-date', at: { row: 2 } }],
    [column(46082, '08:00'), column(2.1, 2.2), { code: 'time-without-date', at: { row: 2 } }],
    [column(46082, '0900'), column(2.1, 2.2), { code: 'time-without-date', at: { row: 2 } }],
    [column('3/1/2026', 46083), column(2.1, 2.2), { code: 'not-a-time', at: { row: 1 } }],
    [column('2026-02-29', 46083), column(2.1, 2.2), { code: 'not-a-time', at: { row: 1 } }],
    [column('2026-03-01T08:00Z', 46083), column(2.1, 2.2), { code: 'time-with-zone', at: { row: 1 } }],
    [column('2026-03-01 08:00+02:00', 46083), column(2.1, 2.2), { code: 'time-with-zone', at: { row: 1 } }],
    [column(-3, 46083), column(2.1, 2.2), { code: 'not-a-time', at: { row: 1 } }],
    [column(20260301, 46083), column(2.1, 2.2), { code: 'not-a-time', at: { row: 1 } }],
    [column(true, 46083), column(2.1, 2.2), { code: 'not-a-time', at: { row: 1 } }],
    [column({ error: '#REF!' }, 46083), column(2.1, 2.2), { code: 'error-cell', at: { row: 1 }, given: '#REF!' }],
    [
      [
        [46082, 0.5],
        [null, 0.5],
      ],
      column(2.1, 2.2),
      { code: 'time-without-date', at: { row: 2 } },
    ],
    [
      [
        [46082, 0.5],
        [46083, 16],
      ],
      column(2.1, 2.2),
      { code: 'not-a-time-of-day', at: { row: 2 } },
    ],
    [
      [
        [46082, 0.5],
        [46083.5, 0.25],
      ],
      column(2.1, 2.2),
      { code: 'two-times-of-day', row: 2 },
    ],
  ])('refuses %j with %j', (when, copper, problem) => {
    expect(read(when, copper)).toMatchObject({ ok: false, problem });
  });
});
