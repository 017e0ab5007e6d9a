import type { RawRange } from '../../../src/engine/log/parallelRanges.js';
import { readLossReadings } from '../../../src/engine/log/readLossReadings.js';
import type { Cell } from '../../../src/engine/units/cell.js';

const cellOf = (raw: unknown): Cell => (raw === undefined ? null : (raw as Cell));
const column = (...cells: unknown[]): RawRange => cells.map((cell) => [cell]);
const read = (when: RawRange, copper: RawRange, rise?: RawRange) => readLossReadings({ when, copper, rise, cellOf });

function entries(when: RawRange, copper: RawRange, rise?: RawRange) {
  const result = read(when, copper, rise);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value.map(({ row, low, rise: added }) => [row, low, added]);
}

describe('readLossReadings', () => {
  it('reads times, readings and what was added before each', () => {
    expect(entries(column(46082, 46083, 46084), column(2, '2.1 ppm', 2.05), column(null, '100 ug/L', 'none'))).toEqual([
      [1, 2, 0],
      [2, 2.1, 0.1],
      [3, 2.05, 0],
    ]);
  });

  it.each([
    ['left out', undefined],
    ['blank', column(null)],
    ['an empty text', column('')],
  ])('takes nothing as added where the range is %s', (_, rise) => {
    expect(entries(column(46082, 46083), column(2, 1.9), rise)).toEqual([
      [1, 2, 0],
      [2, 1.9, 0],
    ]);
  });

  it('leaves out a row of headings', () => {
    expect(entries(column('Date', 46082), column('Copper', 2), column('Dosed', 0.1))).toEqual([[2, 2, 0.1]]);
  });

  it('hands a rise without a test on to the next reading, in the order of time', () => {
    const when = column(46084, 46082, 46083, 46083.5, 46085);
    expect(entries(when, column(2.1, 2, null, 'void 1.6', ''), column(0.05, null, 0.1, 0.2, 0.3))).toEqual([
      [2, 2, 0],
      [1, 2.1, expect.closeTo(0.35, 12)],
    ]);
  });

  it('takes the low end of a range, and keeps a bound for what it is', () => {
    const result = read(column(46082, 46083, 46084), column('2.0-2.25', '<0.05', '>5'));
    expect(result).toMatchObject({
      value: [
        { low: 2, high: 2.25 },
        { low: 0, high: 0.05 },
        { low: 5, high: Infinity },
      ],
    });
  });

  it.each([
    ['LOW', { code: 'not-a-value', at: { row: 2 } }],
    [-0.1, { code: 'out-of-limits', at: { row: 2 } }],
    [21, { code: 'out-of-limits', at: { row: 2 } }],
    [{ error: '#N/A' }, { code: 'error-cell', at: { row: 2 } }],
  ])('refuses a rise of %p with its row', (rise, problem) => {
    expect(read(column(46082, 46083), column(2, 1.9), column(null, rise))).toMatchObject({ ok: false, problem });
  });

  it('refuses a rise without a time, and ranges of other rows', () => {
    expect(read(column(46082, null), column(2, null), column(null, 0.1))).toMatchObject({
      problem: { code: 'rise-without-time', row: 2 },
    });
    expect(read(column(46082, 46083), column(2, 1.9), column(0, 0, 0))).toMatchObject({
      problem: { code: 'unequal-ranges', secondCells: 3 },
    });
  });

  it('names the lowest row of several faults, of whatever kind', () => {
    const when = column(46082, 46083, 46084, 46085);
    expect(read(when, column(2, 0, 1.8, 'purple'))).toMatchObject({ problem: { code: 'not-one-level', row: 2 } });
    expect(read(when, column(2, 1.9, 1.8, 'purple'), column(0, 0, 'x', 0))).toMatchObject({
      problem: { at: { row: 3 } },
    });
    expect(read(when, column(2, 1.9, 1.8, 1.7), column(0, 3, 'x', 0))).toMatchObject({
      problem: { code: 'rise-not-below-reading', row: 2 },
    });
    expect(read(when, column(2, 1.9, 'purple', 1.7), column(0, 0, 0, 'x'))).toMatchObject({
      problem: { at: { row: 3 } },
    });
  });
});
