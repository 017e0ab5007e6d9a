import * as XLSX from '@e965/xlsx';
import { patchXlsx } from '../../../src/sheet/patch/patchXlsx';
import { readBook } from '../../../src/sheet/read/readBook';
import { expectAdded, expectPatched } from './expectPatched';
import { byExcelize, byExceljs, withMacros } from './realFiles';
import { partIn } from './smallWorkbook';

describe('patchXlsx on files of several writers', () => {
  it('exceljs: formats, rules, notes, names, tables and pictures stay', async () => {
    await expectPatched(await byExceljs());
  });

  it('excelize: charts, validation, names and tables stay', async () => {
    await expectPatched(await byExcelize());
  });

  it('an .xlsm: its macros stay', async () => {
    const after = await expectPatched(withMacros(await byExcelize()));
    expect(partIn(after, 'xl/vbaProject.bin')).toBe(partIn(withMacros(await byExcelize()), 'xl/vbaProject.bin'));
  });

  it('new formulas, among them a dynamic array, and dates open in all of them', async () => {
    await expectAdded(await byExceljs());
    await expectAdded(await byExcelize());
  });

  it('a shared formula outlives its first cell in a file of exceljs', async () => {
    const before = await byExceljs();
    const formula = (file: Uint8Array, row: number): unknown =>
      readBook(file, 'x.xlsx').sheets[0]?.rows[row]?.[4]?.formula;
    const after = patchXlsx(before, [{ sheet: 'Log', row: 1, column: 4, value: 9, formula: null }]);
    expect([1, 2, 3, 4].map((row) => formula(after, row))).toEqual([undefined, 'B3*2', 'B4*2', 'B5*2']);
    expect(XLSX.read(after, { type: 'array' }).Sheets['Log']!['E5'].f).toBe('B5*2');
  });
});
