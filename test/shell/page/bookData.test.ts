import { bookData } from '../../../src/shell/page/bookData.js';
import { gridFormulas } from '../../../src/shell/page/gridFormulas.js';
import type { Book, BookSheet } from '../../../src/shell/workbook/book.js';

// The sheet component itself loads in a browser alone: its numbers for kinds and switches stand here.
jest.mock('@univerjs/core', () => ({
  BooleanNumber: { FALSE: 0, TRUE: 1 },
  CellValueType: { STRING: 1, NUMBER: 2, BOOLEAN: 3, FORCE_STRING: 4 },
  HorizontalAlign: { LEFT: 1 },
  LocaleType: { EN_US: 'enUS' },
}));
jest.mock('../../../src/shell/page/lookStyle.js', () => ({ headingStyle: {}, numberHeadingStyle: {}, plainStyle: {} }));

const sheet: BookSheet = {
  name: '__proto__',
  hidden: false,
  rows: [
    [{ value: 'When' }, { value: 'Copper mg/L' }],
    [{ value: 46085.5, format: 'yyyy-mm-dd hh:mm' }, { value: '2.05' }, { value: true }],
    undefined,
    [{ value: 4, formula: '_xldudf_QT_HOLDDAYS(Log[When],Log[Copper mg/L],"chelated")' }],
  ],
  merged: [{ firstRow: 5, firstColumn: 0, lastRow: 5, lastColumn: 3 }],
  widths: [140],
};
const range = { firstRow: 0, firstColumn: 0, lastRow: 1, lastColumn: 1 };
const columns = ['When', 'Copper mg/L'];
const book: Book = {
  kind: 'xlsx',
  sheets: [sheet, { ...sheet, name: 'Old', hidden: true, rows: [], merged: [] }],
  names: [],
  tables: [{ name: 'Log', sheet: '__proto__', range, columns, headings: true, totals: false }],
  date1904: false,
  remarks: [],
};
const formulas = gridFormulas(book);
const data = bookData({
  unit: 'file-1',
  name: 'log.xlsx',
  book,
  formulas,
  headingsOf: (name) => (name === '__proto__' ? [{ ...range, lastRow: 0 }] : []),
});
const first = data.sheets?.['sheet-1'];

describe('bookData', () => {
  it('keeps the order and the names of the sheets, whatever they are called', () => {
    expect(data.sheetOrder).toEqual(['sheet-1', 'sheet-2']);
    expect(Object.values(data.sheets ?? {}).map(({ name }) => name)).toEqual(['__proto__', 'Old']);
    expect([first?.hidden, data.sheets?.['sheet-2']?.hidden]).toEqual([0, 1]);
  });

  it('shows values with their formats, a text that looks like a number as text', () => {
    expect(first?.cellData?.[1]?.[0]).toEqual({ v: 46085.5, t: 2, s: 'format yyyy-mm-dd hh:mm' });
    expect(data.styles?.['format yyyy-mm-dd hh:mm']).toEqual({ n: { pattern: 'yyyy-mm-dd hh:mm' }, ht: 1 });
    expect(first?.cellData?.[1]?.[1]).toEqual({ v: '2.05', t: 4 });
    expect(first?.cellData?.[1]?.[2]).toEqual({ v: 1, t: 3 });
  });

  it('gives the grid plain references and keeps what people wrote', () => {
    expect(first?.cellData?.[3]?.[0]).toEqual({ v: 4, t: 2, f: '=QT.HOLDDAYS($A$2,$B$2,"chelated")' });
    expect([...formulas.values()].map(({ typed }) => typed)).toEqual([
      '=QT.HOLDDAYS(Log[When],Log[Copper mg/L],"chelated")',
    ]);
  });

  it('keeps the heading of a log in view and sets it off', () => {
    expect(first?.freeze).toEqual({ xSplit: 0, ySplit: 1, startRow: 1, startColumn: -1 });
    expect(first?.cellData?.[0]?.[0]?.s).toBe('heading');
    expect(data.sheets?.['sheet-2']?.freeze?.ySplit).toBe(0);
  });

  it('takes widths from the file, and makes others wide enough', () => {
    expect(first?.columnData?.[0]?.w).toBe(140);
    expect(first?.columnData?.[1]?.w).toBeGreaterThan(80);
    expect(first?.mergeData).toEqual([{ startRow: 5, startColumn: 0, endRow: 5, endColumn: 3 }]);
  });
});
