import { filledCells, lastRow } from '../../../src/app/page/filledCells.js';
import type { BookSheet } from '../../../src/sheet/book/book.js';

const fills = { firstRow: 1, firstColumn: 0, lastRow: 2, lastColumn: 1 };
const sheet: BookSheet = {
  name: 'Log',
  hidden: false,
  rows: [
    [{ value: 'When' }],
    [{ value: 'From', formula: '_xldudf_QT_HOLDS(A2:A9,B2:B9,"chelated")', fills, dynamic: true }, { value: 'To' }],
    [{ value: 1 }, { value: 2 }, { value: 3 }],
    undefined,
    [undefined, { value: null, format: '0.00' }],
  ],
  merged: [],
  widths: [],
};

describe('filledCells', () => {
  it('are those of the table of another cell, not the cell of the formula, nor those beside', () => {
    const isFilled = filledCells(sheet);
    const found = [0, 1, 2, 3].map((row) => [0, 1, 2].filter((column) => isFilled(row, column)));
    expect(found).toEqual([[], [1], [0, 1], []]);
  });
});

describe('lastRow', () => {
  it('is the last with a value or a formula, whatever is formatted below', () => {
    expect(lastRow(sheet)).toBe(2);
    expect(lastRow({ ...sheet, rows: [] })).toBe(-1);
  });
});
