import { Workbook } from 'exceljs';
import { movedPlaces } from '../../../src/app/page/movedPlaces.js';
import { placesInCopy } from '../../../src/app/page/placesInCopy.js';
import { readBook } from '../../../src/sheet/read/readBook.js';
import { partOf } from '../../../src/sheet/zip/partOf.js';
import { zipEntries } from '../../../src/sheet/zip/zipEntries.js';
import { loggedWorkbook } from '../../browser/loggedWorkbook.js';

/** What the reader of workbooks keeps of tables, and its types leave out. */
interface WithTables {
  readonly model: { readonly tables: readonly { readonly name: string; readonly tableRef: string }[] };
}

describe('placesInCopy', () => {
  it('lets a table of the file reach as far as the grid says, and nothing else', async () => {
    const bytes = await loggedWorkbook({ readings: 10 });
    const before = readBook(bytes, 'tank.xlsx');
    const { tables, names } = before;
    const [table] = tables;
    expect(table?.range.lastRow).toBe(10);
    const now = tables.map((one) => ({ ...one, range: { ...one.range, lastRow: 12 } }));
    const copy = placesInCopy(bytes, before, { tables: now, names });
    expect(readBook(copy, 'tank.xlsx').tables).toEqual(now);
    const book = new Workbook();
    await book.xlsx.load(copy.buffer as ArrayBuffer);
    const [read] = (book.getWorksheet('Tank log') as unknown as WithTables).model.tables;
    expect([read?.name, read?.tableRef]).toEqual(['Readings', 'A1:D13']);
    expect(placesInCopy(bytes, before, before)).toBe(bytes);
  });
  it('moves named ranges, and keeps the filter of a table off its row of totals', async () => {
    const book = new Workbook();
    const sheet = book.addWorksheet('Log & card');
    const columns = [{ name: 'When', filterButton: true, totalsRowLabel: 'Total' }, { name: 'Copper' }];
    sheet.addTable({ name: 'Readings', ref: 'A3', headerRow: true, totalsRow: true, columns, rows: [[46082, 2.2]] });
    book.definedNames.add("'Log & card'!$D$2:$E$5", 'TheCard');
    book.definedNames.add("'Log & card'!$D$9", 'Other');
    const bytes = new Uint8Array(await book.xlsx.writeBuffer());
    const before = readBook(bytes, 'a.xlsx');
    const sheetName = 'Log & card';
    const now = movedPlaces(before, { sheet: sheetName, lines: 'rows', first: 0, count: 1, how: 'inserted' });
    const copy = placesInCopy(bytes, before, now);
    const read = readBook(copy, 'a.xlsx');
    expect(read.names.map(({ name, formula }) => [name, formula])).toEqual([
      ['TheCard', "'Log & card'!$D$3:$E$6"],
      ['Other', "'Log & card'!$D$10"],
    ]);
    expect(read.tables).toMatchObject([{ totals: true, range: { firstRow: 3, lastRow: 5 } }]);
    const part = zipEntries(copy).find(({ name }) => /^xl\/tables\/.*xml$/.test(name));
    expect(new TextDecoder().decode(partOf(copy, part!))).toContain('<autoFilter ref="A4:B5"');
  });

  it('leaves a table alone that has more columns than its file lists', async () => {
    const bytes = await loggedWorkbook({ readings: 3 });
    const before = readBook(bytes, 'tank.xlsx');
    const now = movedPlaces(before, { sheet: 'Tank log', lines: 'columns', first: 1, count: 1, how: 'inserted' });
    expect(placesInCopy(bytes, before, now)).toBe(bytes);
  });
});
