import ExcelJS from 'exceljs';
import * as XLSX from '@e965/xlsx';
import { unzipSync } from 'fflate';
import { cellRange } from '../../../src/sheet/address/cellRange';
import type { CellValue } from '../../../src/sheet/cell/cellValue';
import type { CellWrite } from '../../../src/sheet/patch/cellWrite';
import { patchXlsx } from '../../../src/sheet/patch/patchXlsx';
import { readBook } from '../../../src/sheet/read/readBook';
import { sheetPartNames } from './sheetPartNames';
import { zipEntries } from '../../../src/sheet/zip/zipEntries';
import { wholeExcelize } from './realFiles';
import { partIn } from './smallWorkbook';

const newValues: readonly (readonly [string, CellValue])[] = [
  ['D2', 7.25],
  ['D3', 'new & <text> '],
  ['D4', { type: 'Error', basicValue: '#N/A' }],
  ['D5', true],
  ['F2', 'Since'],
  ['G3', 46085.5],
  ['J12', 'typed'],
  ['J13', false],
  ['A5', 46090.25],
  ['J14', 12.5],
  ['K13', { type: 'Error', basicValue: '#DIV/0!' }],
];

export const writes: readonly CellWrite[] = newValues.map(([address, value]) => {
  const { firstRow: row, firstColumn: column } = cellRange(address);
  return { sheet: 'Log', row, column, value };
});

/** Each part as it is packed, by its name, in order. */
function packed(file: Uint8Array): [string, string][] {
  return zipEntries(file).map(({ name, dataStart, compressedSize, method, crc }) => {
    return [
      name,
      `${method} ${crc} ${Buffer.from(file.subarray(dataStart, dataStart + compressedSize)).toString('base64')}`,
    ];
  });
}

/** The XML with the cells written to cut out, those that were there before leaving their address. */
function aroundCells(xml: string, before: string): string {
  const written = new RegExp(
    `<c r="(${newValues.map(([address]) => address).join('|')})"(?: [^>]*[^/])?(?:/>|>.*?</c>)`,
    'gs',
  );
  const around = xml.replace(written, (_, address: string) =>
    before.includes(`<c r="${address}"`) ? `{${address}}` : '',
  );
  const empty = before.includes('<row r="12"')
    ? around
    : around.replace('<row r="12"></row><row r="13"></row><row r="14"></row>', '');
  return empty.replace(/<dimension ref="[^"]*"/, '').replace(/ spans="[^"]*"/g, '');
}

export function expectOthersUntouched(before: Uint8Array, after: Uint8Array, part: string): void {
  const others = (file: Uint8Array): [string, string][] => packed(file).filter(([name]) => name !== part);
  expect(packed(after).map(([name]) => name)).toEqual(packed(before).map(([name]) => name));
  expect(others(after)).toEqual(others(before));
  const [unpackedBefore, unpackedAfter] = [unzipSync(before), unzipSync(after)];
  for (const name of Object.keys(unpackedBefore)) {
    if (name !== part) expect(Buffer.compare(unpackedBefore[name]!, unpackedAfter[name]!)).toBe(0);
  }
}

const expectedValues = {
  D2: 7.25,
  D3: 'new & <text> ',
  D4: '#N/A',
  D5: true,
  F2: 'Since',
  G3: 46085.5,
  J12: 'typed',
  J13: false,
  K13: '#DIV/0!',
  A5: 46090.25,
  J14: 12.5,
};

function valuesBySheetReader(file: Uint8Array): Record<string, unknown> {
  const sheet = XLSX.read(file, { type: 'array', sheetStubs: true }).Sheets['Log']!;
  return Object.fromEntries(
    Object.keys(expectedValues).map((address) => [
      address,
      sheet[address]?.t === 'e' ? sheet[address].w : sheet[address]?.v,
    ]),
  );
}

async function valuesByExceljs(file: Uint8Array): Promise<Record<string, unknown>> {
  const book = new ExcelJS.Workbook();
  await book.xlsx.load(file.slice().buffer);
  const sheet = book.getWorksheet('Log')!;
  const plain = (value: unknown): unknown => {
    if (value instanceof Date) return value.getTime() / 86_400_000 + 25569;
    if (typeof value === 'object' && value !== null && 'result' in value) return plain(value.result);
    return typeof value === 'object' && value !== null && 'error' in value ? value.error : value;
  };
  return Object.fromEntries(
    Object.keys(expectedValues).map((address) => [address, plain(sheet.getCell(address).value)]),
  );
}

async function valuesByExcelize(file: Uint8Array): Promise<Record<string, unknown>> {
  const book = (await wholeExcelize()).OpenReader(file);
  expect(book.error).toBeNull();
  const raw = Object.keys(expectedValues).map((address) => [
    address,
    book.GetCellValue('Log', address, { RawCellValue: true }).value,
  ]);
  return Object.fromEntries(raw);
}

export async function expectPatched(before: Uint8Array): Promise<Uint8Array> {
  const after = patchXlsx(before, writes);
  const part = sheetPartNames(before).get('Log')!;
  expectOthersUntouched(before, after, part);
  const xml = partIn(before, part);
  expect(aroundCells(partIn(after, part), xml)).toBe(aroundCells(xml, xml));
  expect(valuesBySheetReader(after)).toEqual(expectedValues);
  expect(await valuesByExceljs(after)).toEqual(expectedValues);
  expect(await valuesByExcelize(after)).toEqual({
    ...expectedValues,
    D2: '7.25',
    D5: '1',
    G3: '46085.5',
    J13: '0',
    A5: '46090.25',
    J14: '12.5',
  });
  expect(patchXlsx(after, writes)).toBe(after);
  return after;
}

/** A formula with a table as its answer, a date and a typed text, where nothing stood. */
const additions: readonly CellWrite[] = [
  {
    sheet: 'Log',
    row: 20,
    column: 3,
    value: 'Since',
    formula: '_xldudf_QT_HOLDROWS(A2:A5,B2:B5)',
    dynamic: true,
    fills: cellRange('D21:E22'),
  },
  { sheet: 'Log', row: 20, column: 4, value: 'Until' },
  { sheet: 'Log', row: 21, column: 3, value: 46082.5, isDate: true },
  { sheet: 'Log', row: 21, column: 4, value: 46083.5, isDate: true },
  { sheet: 'Log', row: 22, column: 3, value: 6, formula: 'SUM(1,2,3)' },
];

export async function expectAdded(before: Uint8Array): Promise<Uint8Array> {
  const after = patchXlsx(before, additions);
  const cells = readBook(after, 'log.xlsx').sheets[0]?.rows ?? [];
  expect(cells[20]?.[3]).toMatchObject({ value: 'Since', dynamic: true, fills: cellRange('D21:E22') });
  expect(cells[21]?.slice(3, 5)).toEqual([46082.5, 46083.5].map((value) => ({ value, format: 'yyyy-mm-dd hh:mm' })));
  const sheet = XLSX.read(after, { type: 'array', cellNF: true }).Sheets['Log']!;
  expect([sheet['D21'].v, sheet['D22'].v, sheet['D22'].z, sheet['D23'].f]).toEqual([
    'Since',
    46082.5,
    'yyyy-mm-dd hh:mm',
    'SUM(1,2,3)',
  ]);
  const book = new ExcelJS.Workbook();
  await book.xlsx.load(after.slice().buffer);
  expect(book.getWorksheet('Log')!.getCell('E22').value).toEqual(new Date(Date.UTC(2026, 2, 2, 12)));
  expect((await wholeExcelize()).OpenReader(after).GetCellValue('Log', 'D22').value).toBe('2026-03-01 12:00');
  expect(patchXlsx(after, additions)).toBe(after);
  return after;
}
