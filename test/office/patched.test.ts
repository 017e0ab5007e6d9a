import * as XLSX from '@e965/xlsx';
import { qtNames } from '../../src/app/calls/outsideFunctions.js';
import { cellRange } from '../../src/sheet/address/cellRange.js';
import type { CellValue } from '../../src/sheet/cell/cellValue.js';
import { patchOds } from '../../src/sheet/patch/patchOds.js';
import { patchXlsx } from '../../src/sheet/patch/patchXlsx.js';
import { readBook } from '../../src/sheet/read/readBook.js';
import { expectAdded, expectOthersUntouched, expectPatched, writes } from '../sheet/patch/expectPatched.js';
import { byExcelize, byExceljs, withMacros } from '../sheet/patch/realFiles.js';
import { partIn } from '../sheet/patch/smallWorkbook.js';
import { converted, whereOffice } from './whereOffice.js';

/**
 * LibreOffice does not know our functions and computes some formulas anew all the same: arrays, those whose result is an
 * error or a truth value, and those with a text where it does not trust the writer. The others say what it read.
 */
const expectedByOffice = {
  D2: 7.25,
  D3: 'new & <text> ',
  J12: 'typed',
  J13: false,
  K13: '#DIV/0!',
  A5: 46090.25,
  J14: 12.5,
};

/** As LibreOffice reads it, shown by what it writes. */
function valuesByOffice(file: Uint8Array, from: 'xlsx' | 'xlsm' | 'ods'): Record<string, unknown> {
  const read = readBook(converted(file, { from, to: 'ods' }), 'read.ods').sheets.find(({ name }) => name === 'Log')!;
  const plain = (value: CellValue | undefined): unknown =>
    typeof value === 'object' && value !== null ? value.basicValue : value;
  return Object.fromEntries(
    Object.keys(expectedByOffice).map((address) => {
      const { firstRow, firstColumn } = cellRange(address);
      return [address, plain(read.rows[firstRow]?.[firstColumn]?.value)];
    }),
  );
}

whereOffice('patchXlsx and patchOds with LibreOffice', () => {
  it('reads what was patched into files of the other writers', async () => {
    const untrusted = { ...expectedByOffice, D3: '#NAME?' };
    expect(valuesByOffice(patchXlsx(await byExceljs(), writes), 'xlsx')).toEqual(expectedByOffice);
    expect(valuesByOffice(patchXlsx(await byExcelize(), writes), 'xlsx')).toEqual(untrusted);
    expect(valuesByOffice(patchXlsx(withMacros(await byExcelize()), writes), 'xlsm')).toEqual(untrusted);
  }, 120_000);

  it('reads its own .xlsx and .xlsm patched, with all else untouched', async () => {
    const xlsx = converted(await byExcelize(), { from: 'xlsx', to: 'xlsx' });
    expect(valuesByOffice(await expectPatched(xlsx), 'xlsx')).toEqual(expectedByOffice);
    const xlsm = converted(await byExcelize(), { from: 'xlsx', to: 'xlsm:Calc MS Excel 2007 VBA XML' });
    expect(valuesByOffice(await expectPatched(xlsm), 'xlsm')).toEqual(expectedByOffice);
  }, 120_000);

  it('reads new formulas and dates', async () => {
    for (const file of [await byExcelize(), converted(await byExceljs(), { from: 'xlsx', to: 'xlsx' })]) {
      const read = readBook(converted(await expectAdded(file), { from: 'xlsx', to: 'ods' }), 'read.ods').sheets[0]
        ?.rows;
      expect(read?.[22]?.[3]).toMatchObject({ value: 6, formula: 'SUM(1,2,3)' });
      expect(read?.[20]?.[3]?.fills).toEqual(cellRange('D21:E22'));
    }
    const ods = converted(await byExceljs(), { from: 'xlsx', to: 'ods' });
    const added = patchOds(
      ods,
      [
        { sheet: 'Log', row: 20, column: 0, value: 46082.5, isDate: true },
        { sheet: 'Log', row: 20, column: 1, value: 6, formula: 'SUM(1,2,3)' },
      ],
      qtNames,
    );
    const cells = readBook(converted(added, { from: 'ods', to: 'xlsx' }), 'read.xlsx').sheets[0]?.rows[20];
    expect(cells?.map((cell) => cell?.value)).toEqual([46082.5, 6]);
    expect(cells?.[0]?.format).toMatch(/[yY]/);
    expect(cells?.[1]?.formula).toBe('SUM(1,2,3)');
  }, 120_000);

  it('reads its own .ods patched, with all else untouched', async () => {
    const before = converted(await byExceljs(), { from: 'xlsx', to: 'ods' });
    const after = patchOds(before, writes, qtNames);
    expectOthersUntouched(before, after, 'content.xml');
    // It computes every number anew whose formula it does not know, also in a file of its own that nobody touched.
    expect(valuesByOffice(after, 'ods')).toEqual({ ...expectedByOffice, D2: '#NAME?' });
    expect(patchOds(after, writes, qtNames)).toBe(after);
    // The reader complains of number formats that were there before.
    const complaints = jest.spyOn(console, 'error').mockReturnValue();
    const read = XLSX.read(after, { type: 'array' }).Sheets['Log']!;
    complaints.mockRestore();
    expect([read['D2'].v, read['D3'].v, read['J12'].v]).toEqual([7.25, 'new & <text> ', 'typed']);
    const one = patchOds(before, writes.slice(0, 1), qtNames);
    expect(changedPiece(partIn(before, 'content.xml'), partIn(one, 'content.xml'))).not.toMatch(/<(?!\/?text:)/);
  }, 120_000);
});

/** What of a text lies between the longest start and end that it shares with another. */
function changedPiece(text: string, other: string): string {
  let start = 0;
  while (text[start] === other[start]) start += 1;
  let end = 0;
  while (text[text.length - 1 - end] === other[other.length - 1 - end]) end += 1;
  return text.slice(start, text.length - end);
}
