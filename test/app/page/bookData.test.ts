import { bookData } from '../../../src/app/page/bookData.js';
import { gridFormulas } from '../../../src/app/page/gridFormulas.js';
import type { Book, BookSheet } from '../../../src/sheet/book/book.js';
import type { CellLook } from '../../../src/sheet/book/cellLook.js';

// The sheet component itself loads in a browser alone: its numbers for kinds and switches stand here.
jest.mock('@univerjs/core', () => ({
  BooleanNumber: { FALSE: 0, TRUE: 1 },
  CellValueType: { STRING: 1, NUMBER: 2, BOOLEAN: 3, FORCE_STRING: 4 },
  BorderStyleTypes: { THIN: 1, HAIR: 2, DOTTED: 3, DASHED: 4, DASH_DOT: 5, DOUBLE: 7, MEDIUM: 8, THICK: 13 },
  HorizontalAlign: { UNSPECIFIED: 0, LEFT: 1, CENTER: 2, RIGHT: 3, JUSTIFIED: 4 },
  LocaleType: { EN_US: 'enUS' },
  VerticalAlign: { TOP: 1, MIDDLE: 2, BOTTOM: 3 },
  WrapStrategy: { OVERFLOW: 1, CLIP: 2, WRAP: 3 },
}));
jest.mock('../../../src/app/page/fontOnMachine.js', () => ({ fontOnMachine: (name: string) => name === 'Arial' }));
jest.mock('../../../src/app/page/usualStyles.js', () => ({ headingStyle: {}, numberHeadingStyle: {}, plainStyle: {} }));

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

const look: CellLook = { bold: true, fill: '#37677a', colour: '#ffffff', wrap: true };
const looked: BookSheet = {
  name: 'Log',
  hidden: false,
  rows: [
    [{ value: 'When', look }, { value: 'Copper mg/L' }],
    [{ value: 46085.5, format: 'yyyy-mm-dd', look: { wrap: true } }, { value: 2.05 }],
    [
      {
        value: 'A',
        formula: '_xldudf_QT_SYSTEMS(A1)',
        fills: { firstRow: 2, firstColumn: 0, lastRow: 2, lastColumn: 1 },
      },
      { value: 18.395833, format: '0.0', look: { across: 'right' } },
      { value: null, format: '0.0' },
    ],
    [{ value: 'big', look: { size: 30 } }],
  ],
  merged: [],
  widths: [140],
  layout: {
    heights: [48, 20],
    fixedRows: new Set([0]),
    defaultHeight: 18,
    hiddenRows: new Set([1]),
    hiddenColumns: new Set([1]),
    rowStyles: new Map([[5, { look }]]),
    columnStyles: new Map([[12, { format: '0.0' }]]),
    frozen: { rows: 1, columns: 2 },
    gridlines: false,
    tab: '#1f4e5f',
  },
};

describe('bookData of a file with looks', () => {
  const ofFile: Book = { ...book, sheets: [looked], tables: [], plain: { font: 'Arial', size: 10 } };
  const seen = bookData({
    unit: 'file-2',
    name: 'looks.xlsx',
    book: ofFile,
    formulas: gridFormulas(ofFile),
    headingsOf: () => [{ firstRow: 0, firstColumn: 0, lastRow: 0, lastColumn: 1 }],
  });
  const only = seen.sheets?.['sheet-1'];
  const styleAt = (row: number, column: number): unknown =>
    seen.styles?.[String(only?.cellData?.[row]?.[column]?.s)] ?? undefined;

  it('draws a cell as its file has it, and a heading without a look of its own as that of a log', () => {
    expect(styleAt(0, 0)).toMatchObject({ bl: 1, bg: { rgb: '#37677a' }, cl: { rgb: '#ffffff' }, tb: 3, vt: 3 });
    expect(only?.cellData?.[0]?.[1]?.s).toBe('numberHeading');
    expect(only?.defaultStyle).toMatchObject({ ff: 'Arial', fs: 10, bg: null, bd: null, n: null });
  });

  it('breaks no number into lines', () => {
    expect(styleAt(1, 0)).toMatchObject({ n: { pattern: 'yyyy-mm-dd' }, tb: 2 });
  });

  it('gives what a table fills its look and its format, and leaves the value to the table', () => {
    expect(only?.cellData?.[2]?.[1]).toEqual({ s: expect.any(String) });
    expect(styleAt(2, 1)).toMatchObject({ n: { pattern: '0.0' }, ht: 3 });
    expect(only?.cellData?.[2]?.[2]).toEqual({ s: expect.any(String) });
    expect(styleAt(2, 2)).toMatchObject({ n: { pattern: '0.0' } });
  });

  it('takes heights, hidden rows and columns, what stays in view, and the tab', () => {
    expect(only?.defaultRowHeight).toBe(18);
    expect(only?.rowData?.[0]).toEqual({ h: 48, ia: 0 });
    expect(only?.rowData?.[1]).toEqual({ h: 20, hd: 1 });
    expect(only?.rowData?.[3]?.h).toBeGreaterThan(40);
    expect(only?.columnData?.[1]?.hd).toBe(1);
    expect(only?.freeze).toEqual({ xSplit: 2, ySplit: 1, startRow: 1, startColumn: 2 });
    expect([only?.showGridlines, only?.tabColor]).toEqual([0, '#1f4e5f']);
  });

  it('takes the styles of whole rows and columns', () => {
    expect(seen.styles?.[String(only?.rowData?.[5]?.s)]).toMatchObject({ bl: 1 });
    expect(seen.styles?.[String(only?.columnData?.[12]?.s)]).toMatchObject({ n: { pattern: '0.0' } });
  });
});
