import { readBook } from '../../src/sheet/read/readBook.js';
import { byExceljs, byExcelize, checkAgainstOther, checkLog, heading } from '../sheet/book/logByOthers.js';
import { cellAt } from '../sheet/book/values.js';
import { converted, whereOffice } from './whereOffice.js';

whereOffice('readBook on workbooks by LibreOffice', () => {
  // Each conversion starts a program of its own.
  jest.setTimeout(180_000);

  const forms: readonly (readonly [from: string, to: string, date1904: boolean])[] = [
    ['xlsx', 'xlsx', false],
    ['xlsx', 'ods', false],
    ['xlsx', 'xlsx:Calc MS Excel 2007 XML', true],
    ['xlsx', 'ods', true],
  ];
  it.each(forms)('reads the log of exceljs after %s became %s (from 1904: %s)', async (from, to, date1904) => {
    const bytes = converted(await byExceljs(date1904), { from, to });
    const book = readBook(bytes, 'log');
    expect(book.kind).toBe(to === 'ods' ? 'ods' : 'xlsx');
    checkLog(book);
    expect(book.date1904).toBe(date1904);
    expect(book.sheets[1]).toMatchObject({ name: 'Card', hidden: true });
    expect(cellAt(book, 'B2', 1)?.value).toEqual({ type: 'Error', basicValue: '#N/A' });
    expect(book.names).toEqual([{ name: 'copper', formula: "'My log'!$B$2:$B$5" }]);
    if (!date1904) expect(checkAgainstOther(bytes)).toBeGreaterThan(20);
  });

  it('reads the table of excelize from an .ods file', async () => {
    const book = readBook(converted(await byExcelize(), { from: 'xlsx', to: 'ods' }), 'log.ods');
    checkLog(book);
    expect(book.tables).toMatchObject([{ name: 'Readings', sheet: 'My log', columns: heading, headings: true }]);
  });

  it('refuses its old binary format and its other documents', async () => {
    const bytes = await byExceljs();
    expect(() => readBook(converted(bytes, { from: 'xlsx', to: 'xls' }), 'log.xlsx')).toThrow(/old binary format/);
    expect(() => readBook(converted(bytes, { from: 'xlsx', to: 'fods' }), 'log.ods')).toThrow(/one XML text/);
    expect(() => readBook(converted(bytes, { from: 'xlsx', to: 'pdf' }), 'log.xlsx')).toThrow(/no cells/);
    expect(() => readBook(converted(bytes, { from: 'xlsx', to: 'html' }), 'log.xls')).toThrow(/web page/);
  });
});
