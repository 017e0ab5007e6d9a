import { Workbook } from 'exceljs';
import { grownTables } from '../../../src/app/page/grownTables.js';
import { readBook } from '../../../src/sheet/read/readBook.js';
import { loggedWorkbook } from '../../browser/loggedWorkbook.js';

/** What the reader of workbooks keeps of tables, and its types leave out. */
interface WithTables {
  readonly model: { readonly tables: readonly { readonly name: string; readonly tableRef: string }[] };
}

describe('grownTables', () => {
  it('lets a table of the file reach as far as the grid says, and nothing else', async () => {
    const bytes = await loggedWorkbook({ readings: 10 });
    const { tables } = readBook(bytes, 'tank.xlsx');
    const [table] = tables;
    expect(table?.range.lastRow).toBe(10);
    const now = tables.map((one) => ({ ...one, range: { ...one.range, lastRow: 12 } }));
    const copy = grownTables(bytes, tables, now);
    expect(readBook(copy, 'tank.xlsx').tables).toEqual(now);
    const book = new Workbook();
    await book.xlsx.load(copy.buffer as ArrayBuffer);
    const [read] = (book.getWorksheet('Tank log') as unknown as WithTables).model.tables;
    expect([read?.name, read?.tableRef]).toEqual(['Readings', 'A1:D13']);
    expect(grownTables(bytes, tables, tables)).toBe(bytes);
  });
});
