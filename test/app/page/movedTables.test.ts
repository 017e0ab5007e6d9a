import { movedTables, type RowsMoved } from '../../../src/app/page/movedTables.js';
import type { BookTable } from '../../../src/sheet/book/book.js';

const table: BookTable = {
  name: 'Readings',
  sheet: 'Log',
  range: { firstRow: 4, firstColumn: 0, lastRow: 9, lastColumn: 3 },
  columns: ['When', 'Copper'],
  headings: true,
  totals: false,
};

function rows(how: RowsMoved['how'], firstRow: number, count: number, sheet = 'Log'): readonly (number | undefined)[] {
  const [moved] = movedTables([table], { sheet, firstRow, count, how });
  return [moved?.range.firstRow, moved?.range.lastRow];
}

describe('movedTables', () => {
  it('moves a table down with rows put in above it, up with rows taken out', () => {
    expect(rows('put in', 0, 2)).toEqual([6, 11]);
    expect(rows('put in', 4, 1)).toEqual([5, 10]);
    expect(rows('taken out', 1, 3)).toEqual([1, 6]);
  });

  it('grows and shrinks with rows within it', () => {
    expect(rows('put in', 9, 1)).toEqual([4, 10]);
    expect(rows('taken out', 6, 2)).toEqual([4, 7]);
    expect(rows('taken out', 8, 5)).toEqual([4, 7]);
  });

  it('stays where rows are put in or taken out below it or on another sheet', () => {
    expect(rows('put in', 10, 3)).toEqual([4, 9]);
    expect(rows('taken out', 10, 3)).toEqual([4, 9]);
    expect(rows('put in', 0, 2, 'Old')).toEqual([4, 9]);
  });
});
