import { Workbook } from 'exceljs';
import type { Book } from '../../../src/sheet/book/book';
import { cellAt } from './values';

/** A workbook of exceljs with fonts, fills, borders, heights and hidden rows. */
export async function workbookWithLooks(): Promise<Uint8Array> {
  const book = new Workbook();
  const views = [{ state: 'frozen', xSplit: 0, ySplit: 1, showGridLines: false } as const];
  const sheet = book.addWorksheet('Log', { views, properties: { tabColor: { argb: 'FF1F4E5F' } } });
  sheet.getCell('A1').value = 'Copper mg/L';
  sheet.getCell('A1').font = { bold: true, size: 14, name: 'Arial', color: { argb: 'FFFFFFFF' } };
  sheet.getCell('A1').fill = { type: 'pattern', pattern: 'solid', fgColor: { argb: 'FF37677A' } };
  sheet.getCell('A1').alignment = { wrapText: true, horizontal: 'right', vertical: 'middle' };
  sheet.getCell('A1').border = { bottom: { style: 'medium', color: { argb: 'FFB4521E' } } };
  sheet.getRow(1).height = 36;
  sheet.getCell('B3').numFmt = '0.0';
  sheet.getCell('B3').fill = { type: 'pattern', pattern: 'solid', fgColor: { argb: 'FFE6F0FA' } };
  sheet.getRow(4).hidden = true;
  sheet.getCell('A4').value = 1;
  sheet.getColumn(5).hidden = true;
  sheet.getCell('A5').value = 'last';
  return new Uint8Array(await book.xlsx.writeBuffer());
}

/** The looks that are read from it, whoever saved it since. */
export function expectLooks(book: Book): void {
  expect(cellAt(book, 'A1')?.look).toMatchObject({
    bold: true,
    size: 14,
    font: 'Arial',
    colour: '#ffffff',
    fill: '#37677a',
    across: 'right',
    upright: 'center',
    wrap: true,
    borders: { bottom: { line: 'medium', colour: '#b4521e' } },
  });
  expect(cellAt(book, 'B3')).toMatchObject({ value: null, format: '0.0', look: { fill: '#e6f0fa' } });
  const layout = book.sheets[0]?.layout;
  expect(layout?.heights[0]).toBe(48);
  expect(layout?.fixedRows.has(0)).toBe(true);
  expect([layout?.hiddenRows.has(3), layout?.hiddenRows.has(4)]).toEqual([true, false]);
  expect([layout?.hiddenColumns.has(4), layout?.hiddenColumns.has(0)]).toEqual([true, false]);
}
