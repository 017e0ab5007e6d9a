import { levelsTable } from '../../../src/engine/text/levelsTable.js';
import { eventsOf, type Line } from '../level/eventsOf.js';
import { modelOf } from '../level/modelOf.js';

const tableOf = (lines: readonly Line[]) => levelsTable(eventsOf(lines), modelOf(lines, { lossRate: 0 }));

describe('levelsTable', () => {
  it('has a row a reading, dose, change and top-off, in order, and none for a corrected volume', () => {
    const table = tableOf([
      [1, 'reading', 2],
      [2, 'dose', 20],
      [3, 'volume', 150],
      [4, 'change', 75, 0],
      [5, 'topOff', 0],
    ]);
    expect(table.rows.map((row) => row[0])).toEqual([1, 2, 4, 5]);
    // 2; + 20 mL × 10 ÷ 200 L = 3; half of it after 75 of 150 L
    expect(table.rows.map((row) => Number(row[1]).toFixed(9))).toEqual([
      '2.000000000',
      '3.000000000',
      '1.500000000',
      '1.500000000',
    ]);
    expect(Number(table.rows[0]?.[2])).toBeCloseTo(2 - 0.098, 9);
    expect(Number(table.rows[0]?.[3])).toBeCloseTo(2 + 0.098, 9);
    expect(table.rows.map((row) => row.slice(4))).toEqual([
      [2, 0],
      ['', ''],
      ['', ''],
      ['', ''],
    ]);
  });

  it('says reading less expected, of the low end', () => {
    const table = tableOf([
      [1, 'reading', 2],
      [1, 'reading', 2.2, 2.4],
    ]);
    for (const row of table.rows) expect(Number(row[5])).toBe(Number(row[4]) - Number(row[1]));
    expect(table.rows[1]?.[4]).toBe(2.2);
  });

  it('leaves empty what is not known', () => {
    const table = tableOf([
      [1, 'dose', 20],
      [2, 'change', 200, 1],
      [3, 'reading', 1],
    ]);
    expect(table.rows[0]).toEqual([1, '', '', '', '', '']);
    expect(table.rows.flat().every((cell) => cell === '' || Number.isFinite(cell))).toBe(true);
  });
});
