import { readBook } from '../../../src/sheet/read/readBook';
import { byExceljs, byExcelize, checkAgainstOther, checkLog, heading } from './logByOthers';
import { cellAt } from './values';

describe('readBook on workbooks by other hands', () => {
  it('reads what exceljs wrote', async () => {
    const bytes = await byExceljs();
    const book = readBook(bytes, 'log.xlsx');
    checkLog(book);
    expect(book.sheets[1]).toMatchObject({ name: 'Card', hidden: true });
    expect(cellAt(book, 'B2', 1)?.value).toEqual({ type: 'Error', basicValue: '#N/A' });
    expect(book.names).toEqual([{ name: 'copper', formula: "'My log'!$B$2:$B$5" }]);
    expect(checkAgainstOther(bytes)).toBe(24);
  });

  it('reads the same days from a file of exceljs that counts from 1904', async () => {
    const book = readBook(await byExceljs(true), 'log.xlsx');
    expect(book.date1904).toBe(true);
    checkLog(book);
  });

  it('reads what excelize wrote', async () => {
    const bytes = await byExcelize();
    const book = readBook(bytes, 'log.xlsx');
    checkLog(book, true);
    expect(book.names).toEqual([{ name: 'copper', formula: "'My log'!$B$2:$B$5" }]);
    expect(book.tables).toMatchObject([{ name: 'Readings', sheet: 'My log', columns: heading, headings: true }]);
    expect(checkAgainstOther(bytes)).toBe(24);
  });
});
