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
  const how = { sheet: 'Log', lines: 'rows', first: 0, count: 2, how: 'put in', ...moved } as const;
  return movedPlaces({ ...none, names: [name] }, how).names[0]?.formula;
}

describe('movedPlaces', () => {
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

  it('does the same with columns', () => {
    expect(columns('put in', 0, 2)).toEqual([3, 5]);
    expect(columns('put in', 2, 1)).toEqual([1, 4]);
    expect(columns('taken out', 0, 1)).toEqual([0, 2]);
    expect(columns('put in', 4, 1)).toEqual([1, 3]);
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
