import type { GridSheet } from '../../../src/app/page/gridSheets.js';
import { savedCopy } from '../../../src/app/page/savedCopy.js';
import type { Book } from '../../../src/sheet/book/book.js';
import { bookOf } from '../logs/bookOf.js';
import { gridOf } from './gridOf.js';

const table: Book = {
  ...bookOf({
    log: [
      ['Date', 'Copper'],
      [46082, 2.2],
    ],
  }),
  kind: 'csv',
};

function nameOf(name: string, sheets: readonly GridSheet[] = gridOf(table)): string {
  const opened = { bytes: new Uint8Array(), book: table };
  return savedCopy({ name, opened, formulas: new Map(), places: table, isMoved: false }, sheets).name;
}

describe('savedCopy', () => {
  it('names a copy after its original, in its format or another', () => {
    expect(nameOf('March tank.csv')).toBe('March tank copy.csv');
    expect(nameOf('log')).toBe('log copy.xlsx');
    expect(nameOf('.csv')).toBe('.csv copy.xlsx');
    expect(nameOf('a.b.csv', [...gridOf(table), ...gridOf(bookOf({ More: [['x']] }))])).toBe('a.b copy.xlsx');
  });
});
