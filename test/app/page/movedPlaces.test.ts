import { movedPlaces } from '../../../src/app/page/movedPlaces.js';
import type { BookTable } from '../../../src/sheet/book/book.js';

type Moved = Parameters<typeof movedPlaces>[1];

const table: BookTable = {
  name: 'Readings',
  sheet: 'Log',
  range: { firstRow: 4, firstColumn: 1, lastRow: 9, lastColumn: 3 },
  columns: ['When', 'Copper', 'Note'],
  headings: true,
  totals: false,
};
const none = { tables: [], names: [] };

function rows(how: Moved['how'], first: number, count: number, sheet = 'Log'): readonly (number | undefined)[] {
  const [moved] = movedPlaces({ ...none, tables: [table] }, { sheet, lines: 'rows', first, count, how }).tables;
  return [moved?.range.firstRow, moved?.range.lastRow];
}

function columns(how: Moved['how'], first: number, count: number): readonly (number | undefined)[] {
  const moved = movedPlaces({ ...none, tables: [table] }, { sheet: 'Log', lines: 'columns', first, count, how });
  const range = moved.tables[0]?.range;
  expect([range?.firstRow, range?.lastRow]).toEqual([4, 9]);
  return [range?.firstColumn, range?.lastColumn];
}

function named(formula: string, moved: Partial<Moved> = {}, sheet?: string): string | undefined {
  const name = { name: 'TheCard', formula, ...(sheet === undefined ? {} : { sheet }) };
  const how = { sheet: 'Log', lines: 'rows', first: 0, count: 2, how: 'inserted', ...moved } as const;
  return movedPlaces({ ...none, names: [name] }, how).names[0]?.formula;
}

describe('movedPlaces', () => {
  it('moves a table down with rows inserted above it, up with rows deleted', () => {
    expect(rows('inserted', 0, 2)).toEqual([6, 11]);
    expect(rows('inserted', 4, 1)).toEqual([5, 10]);
    expect(rows('deleted', 1, 3)).toEqual([1, 6]);
  });

  it('grows and shrinks with rows within it', () => {
    expect(rows('inserted', 9, 1)).toEqual([4, 10]);
    expect(rows('deleted', 6, 2)).toEqual([4, 7]);
    expect(rows('deleted', 8, 5)).toEqual([4, 7]);
  });

  it('stays where rows are inserted or deleted below it or on another sheet', () => {
    expect(rows('inserted', 10, 3)).toEqual([4, 9]);
    expect(rows('deleted', 10, 3)).toEqual([4, 9]);
    expect(rows('inserted', 0, 2, 'Old')).toEqual([4, 9]);
  });

  it('does the same with columns', () => {
    expect(columns('inserted', 0, 2)).toEqual([3, 5]);
    expect(columns('inserted', 2, 1)).toEqual([1, 4]);
    expect(columns('deleted', 0, 1)).toEqual([0, 2]);
    expect(columns('inserted', 4, 1)).toEqual([1, 3]);
  });

  it('moves the range that a name stands for, whatever its sheet is called', () => {
    expect(named('Log!$A$2:$B$5')).toBe('Log!$A$4:$B$7');
    expect(named('Log!$B$5')).toBe('Log!$B$7');
    expect(named('Log!$A$2:$B$5', { lines: 'columns', first: 1 })).toBe('Log!$A$2:$D$5');
    expect(named("'Tank ''2'' log'!$A$2:$B$5", { sheet: "Tank '2' log" })).toBe("'Tank ''2'' log'!$A$4:$B$7");
    expect(named('$A$2:$B$5', {}, 'Log')).toBe('$A$4:$B$7');
  });

  it('leaves names alone that are elsewhere, relative, of whole columns, or formulas', () => {
    for (const formula of ['Card!$A$2:$B$5', 'Log!A2:B5', 'Log!$A:$B', 'OFFSET(Log!$A$2,0,0,4,2)', '42'])
      expect(named(formula)).toBe(formula);
    expect(named('$A$2:$B$5', {}, 'Old')).toBe('$A$2:$B$5');
  });
});
