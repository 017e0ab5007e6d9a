import { read as readByOther, utils } from '@e965/xlsx';
import { Workbook } from 'exceljs';
import type { CellValue } from '../../../src/sheet/cell/cellValue';
import { loadExcelize } from '../../../src/app/templates/write/loadExcelize';
import type { Book } from '../../../src/sheet/book/book';
import { readBook } from '../../../src/sheet/read/readBook';
import { serialOfIso } from '../../../src/sheet/book/isoDay';
import { cellAt } from './values';

/** A log as a keeper writes it: times, readings with holes, words, a check box, a formula. */
const times = ['2026-03-02T08:30:00', '2026-03-02T20:15:00', '2026-03-03T08:00:00', '2026-03-29T02:30:00'];
const rows: readonly (readonly [time: string, copper: number | null, note: string, fed: boolean])[] = times.map(
  (time, index) => [time, index === 2 ? null : 2 + index / 16, `tank ${index} – “größe” <&>`, index % 2 === 0],
);
export const heading = ['Time', 'Copper', 'Note', 'Fed', 'Twice'];

/** @param text whether formulas gave text: excelize stores what a formula gives under the type of text */
export function checkLog(book: Book, text = false): void {
  const sheet = book.sheets[0]!;
  expect(sheet.name).toBe('My log');
  expect(sheet.rows[0]?.map((cell) => cell?.value)).toEqual(heading);
  rows.forEach(([time, copper, note, fed], index) => {
    const read = (column: string): CellValue | undefined => cellAt(book, `${column}${index + 2}`)?.value;
    expect(read('A')).toBeCloseTo(serialOfIso(time)!, 9);
    expect(cellAt(book, `A${index + 2}`)?.format).toMatch(/^yyyy.*-mm.*-dd/);
    expect(read('B') ?? null).toBe(copper);
    expect(read('C')).toBe(note);
    expect(read('D')).toBe(fed);
    const twice = (copper ?? 0) * 2;
    expect(cellAt(book, `E${index + 2}`)).toMatchObject({
      value: text ? String(twice) : twice,
      formula: `B${index + 2}*2`,
    });
  });
}

export async function byExceljs(date1904 = false): Promise<Uint8Array> {
  const workbook = new Workbook();
  workbook.properties.date1904 = date1904;
  const sheet = workbook.addWorksheet('My log');
  sheet.addRow(heading);
  rows.forEach(([time, copper, note, fed], index) => {
    const formula = { formula: `B${index + 2}*2`, result: (copper ?? 0) * 2 };
    sheet.addRow([new Date(`${time}Z`), copper, note, fed, formula]);
  });
  sheet.getColumn(1).numFmt = 'yyyy-mm-dd hh:mm';
  sheet.getColumn(3).width = 30;
  workbook.addWorksheet('Card', { state: 'hidden' }).getCell('B2').value = { error: '#N/A' };
  workbook.definedNames.add("'My log'!$B$2:$B$5", 'copper');
  const bytes = await workbook.xlsx.writeBuffer();
  return new Uint8Array(bytes);
}

export async function byExcelize(): Promise<Uint8Array> {
  const excelize = await loadExcelize();
  const file = excelize.NewFile();
  const sheet = 'My log';
  file.SetSheetName('Sheet1', sheet);
  const put = (address: string, value: unknown): void => {
    const { error } = file.SetCellValue(sheet, address, value as string);
    if (error) throw new Error(error);
  };
  heading.forEach((word, column) => put(`${'ABCDE'[column]!}1`, word));
  const { style } = file.NewStyle({ CustomNumFmt: 'yyyy-mm-dd hh:mm' });
  rows.forEach(([time, copper, note, fed], index) => {
    const row = index + 2;
    put(`A${row}`, serialOfIso(time));
    file.SetCellStyle(sheet, `A${row}`, `A${row}`, style);
    if (copper !== null) put(`B${row}`, copper);
    put(`C${row}`, note);
    put(`D${row}`, fed);
    put(`E${row}`, (copper ?? 0) * 2);
    file.SetCellFormula(sheet, `E${row}`, `B${row}*2`);
  });
  file.AddTable(sheet, { Range: 'A1:E5', Name: 'Readings' });
  file.SetDefinedName({ Name: 'copper', RefersTo: "'My log'!$B$2:$B$5" });
  const { buffer, error } = file.WriteToBuffer();
  if (error) throw new Error(error);
  return new Uint8Array(buffer as unknown as ArrayBuffer);
}

/** The same cells as another reader finds them; of errors it has its own view, and it knows no TRUE that .ods hides. */
export function checkAgainstOther(bytes: Uint8Array): number {
  const book = readBook(bytes, 'log');
  // It tells the console of formats it does not follow.
  const told = jest.spyOn(console, 'error').mockImplementation(() => undefined);
  const other = readByOther(bytes, { type: 'array', dense: true, cellFormula: true, cellDates: false });
  told.mockRestore();
  let compared = 0;
  for (const sheet of book.sheets) {
    const data = other.Sheets[sheet.name]?.['!data'] ?? [];
    data.forEach((row, r) =>
      row?.forEach((cell, c) => {
        if (cell === undefined || cell.t === 'z' || cell.t === 'e') return;
        const own = sheet.rows[r]?.[c];
        const place = `${sheet.name}!${utils.encode_cell({ r, c })}`;
        if (typeof own?.value === 'boolean') expect([place, own.value]).toEqual([place, Boolean(cell.v)]);
        else if (typeof cell.v === 'number') expect([place, own?.value]).toEqual([place, expect.closeTo(cell.v, 9)]);
        else expect([place, own?.value]).toEqual([place, cell.v]);
        expect([place, own?.formula]).toEqual([place, cell.f]);
        compared++;
      }),
    );
  }
  return compared;
}
