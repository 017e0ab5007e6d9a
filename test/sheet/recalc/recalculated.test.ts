import ExcelJS from 'exceljs';
import { strToU8, unzipSync } from 'fflate';
import { readBook } from '../../../src/sheet/read/readBook';
import { recalculated } from '../../../src/sheet/recalc/recalculated';
import { addressOf } from '../../../src/sheet/address/addressOf';
import { templateBytes } from '../../../src/app/templates/write/templateBytes';
import { byExceljs, byExcelize } from '../patch/realFiles';
import { odsContentPart, smallOds } from '../patch/smallOds';
import { partIn, rowsIn, smallWorkbook } from '../patch/smallWorkbook';
import { bundle, outside, shown } from './testBook';

const now = 46_100.5;
const days = '_xldudf_QT_HOLDDAYS(A2:A4,B2:B4,"chelated")';
/** Says of cells with `cm="1"` that their array formulas grow and shrink. */
const metadata =
  '<?xml version="1.0"?><metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"><metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" cellMeta="1"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';
const logRows = [2, 3, 4].map(
  (row) => `<row r="${row}"><c r="A${row}"><v>${46_080 + row}</v></c><c r="B${row}"><v>2.1</v></c></row>`,
);

function withRows(...cells: readonly string[]): Uint8Array {
  return smallWorkbook({ sheet: `<row r="1">${cells.join('')}</row>${logRows.join('')}` });
}

async function changesIn(bytes: Uint8Array): Promise<string[]> {
  const { changes } = await recalculated(bytes, 'log.xlsx', outside, { now });
  return changes.map(
    ({ row, column, was, is }) => `${addressOf(row, column)}: ${String(shown(was))} -> ${String(shown(is))}`,
  );
}

describe('recalculated', () => {
  it('gives the very same bytes where nothing changed', async () => {
    const bytes = withRows(`<c r="D1"><f>${days}</f><v>2.0000000000000004</v></c>`);
    const { bytes: same, changes, formulas, remarks } = await recalculated(bytes, 'log.xlsx', outside, { now });
    expect(same).toBe(bytes);
    expect([changes, formulas, remarks]).toEqual([[], 1, []]);
  });

  it('changes the stored value and nothing else', async () => {
    const cell = (value: string): string => `<c r="D1" s="1"><f>${days}</f>${value}</c>`;
    const bytes = withRows(
      cell('<v>99</v>'),
      '<c r="E1"><f>D1*2</f><v>198</v></c>',
      '<c r="F1"><f>E1+1</f><v>199</v></c>',
    );
    const fresh = await recalculated(bytes, 'log.xlsx', outside, { now });
    expect(rowsIn(fresh.bytes)).toBe(rowsIn(bytes).replace('<v>99</v>', '<v>2</v>'));
    for (const [name, part] of Object.entries(unzipSync(bytes))) {
      if (!name.endsWith('sheet1.xml')) expect(unzipSync(fresh.bytes)[name]).toEqual(part);
    }
    expect(fresh.changes).toEqual([
      { sheet: 'Log', row: 0, column: 3, formula: 'QT.HOLDDAYS(A2:A4,B2:B4,"chelated")', was: 99, is: 2 },
    ]);
    expect(fresh.remarks).toEqual([
      '2 other formulas read cells that changed; a spreadsheet program recalculates them',
    ]);
    expect((await recalculated(fresh.bytes, 'log.xlsx', outside, { now })).bytes).toBe(fresh.bytes);
  });

  it('gives a formula that never had a value one, and an error its reason', async () => {
    const bytes = withRows(
      `<c r="D1"><f>${days}</f></c>`,
      '<c r="E1" t="e"><f>_xldudf_QT_HOLDDAYS(A2:A4,B2:B3,"chelated")</f><v>#NAME?</v></c>',
    );
    const fresh = await recalculated(bytes, 'log.xlsx', outside, { now });
    expect(fresh.changes.map(({ was, is }) => [shown(was), shown(is)])).toEqual([
      [null, 2],
      ['#NAME?', '#VALUE!'],
    ]);
    expect(fresh.changes[1]?.reason).toMatch(/^when has 3 cells, copper 2/);
    expect(rowsIn(fresh.bytes)).toContain('<v>#VALUE!</v>');
  });

  it('lets a dynamic array grow and shrink', async () => {
    const array = (ref: string): string =>
      `<c r="D2" t="str" cm="1"><f t="array" ref="${ref}">_xldudf_QT_HOLDROWS(A2:A4,B2:B4,"chelated")</f><v>When</v></c>`;
    const bytes = smallWorkbook({
      metadata,
      sheet: `<row r="2"><c r="A2"><v>46082</v></c><c r="B2"><v>2.1</v></c>${array('D2:D9')}</row>${logRows.slice(1).join('')}<row r="9"><c r="D9"><v>5</v></c></row>`,
    });
    const fresh = await recalculated(bytes, 'log.xlsx', outside, { now });
    const [sheet] = readBook(fresh.bytes, 'log.xlsx').sheets;
    expect(sheet?.rows[1]?.[3]?.fills).toEqual({ firstRow: 1, firstColumn: 3, lastRow: 4, lastColumn: 9 });
    expect(sheet?.rows[1]?.slice(3, 6).map((cell) => cell?.value)).toEqual(['When', 'Copper', 'Status']);
    expect(sheet?.rows[4]?.slice(3, 6).map((cell) => cell?.value)).toEqual([46_084, 2.1, 'in band']);
    expect(sheet?.rows[8]?.[3]?.value ?? null).toBeNull();
    expect((await recalculated(fresh.bytes, 'log.xlsx', outside, { now })).bytes).toBe(fresh.bytes);
  });

  it('stores an error that files do not know as one that they do, and finds it the same the next time', async () => {
    const array =
      '<c r="D1" cm="1"><f t="array" ref="D1">_xldudf_QT_BAND("amine")</f><v>1</v></c><c r="E1"><v>3</v></c>';
    const bytes = smallWorkbook({ metadata, sheet: `<row r="1">${array}</row>` });
    const fresh = await recalculated(bytes, 'log.xlsx', outside, { now });
    expect(fresh.changes.map(({ is, reason }) => [shown(is), reason])).toEqual([
      ['#SPILL!', 'the answer fills D1:E1, and E1 is not empty; clear it or move the formula'],
    ]);
    expect(rowsIn(fresh.bytes)).toContain('<v>#VALUE!</v>');
    expect((await recalculated(fresh.bytes, 'log.xlsx', outside, { now })).bytes).toBe(fresh.bytes);
  });

  it('lets an array formula of old fill its cells alone', async () => {
    const array = '<c r="D1"><f t="array" ref="D1">_xldudf_QT_BAND("amine")</f><v>1</v></c><c r="E1"><v>3</v></c>';
    expect(await changesIn(withRows(array))).toEqual(['D1: 1 -> 0.45']);
  });

  it('counts days as the file counts them', async () => {
    const start = '_xldudf_QT_HOLDSTART(A2:A4,B2:B4,"chelated")';
    const cells = (value: number): string =>
      `<row r="1"><c r="D1" s="1"><f>${start}</f><v>${value}</v></c><c r="E1"><f>${start}</f><v>${value}</v></c><c r="F1"><f>_xldudf_QT_HOLDDAYS(A2:A4,B2:B4,"chelated",NOW())</f><v>1</v></c></row>`;
    const rows = [2, 3, 4].map(
      (row) =>
        `<row r="${row}"><c r="A${row}" s="1"><v>${46_080 + row - 1462}</v></c><c r="B${row}"><v>2.1</v></c></row>`,
    );
    const bytes = smallWorkbook({ date1904: true, sheet: cells(5) + rows.join('') });
    const fresh = await recalculated(bytes, 'log.xlsx', outside, { now: 46_084.5 });
    const values = [...rowsIn(fresh.bytes).matchAll(/<v>([\d.]+)<\/v>/g)].map(([, value]) => Number(value));
    expect(values.slice(0, 3)).toEqual([44_620, 44_620, 2.5]);
    expect((await recalculated(fresh.bytes, 'log.xlsx', outside, { now: 46_084.5 })).bytes).toBe(fresh.bytes);
  });

  it.each([
    ['IFERROR(START,"")', 44_620],
    ['_xlfn.LET(_xlpm.s,START,_xlpm.s+1)', 44_621],
    ['IF(_xldudf_QT_RISE(168,20,4)&gt;0,A3)', 44_621],
    ['ROUND(START+0.25,0)', 44_620],
    ['MAX(INDEX(ROWS,0,1))', 44_622],
    ['INDEX(ROWS,2,1)', 44_620],
    ['DATE(2026,3,1)+0*INDEX(ROWS,2,2)', 44_620],
    ['START-A2', 0],
    ['NOW()-START', 4.5],
    ['INDEX(ROWS,2,2)*1000', 2100],
    ['1000*ROUND(SUM(INDEX(ROWS,0,2)),1)', 6300],
    ['A3-3+0*START', 44_618],
  ])('counts the moment that %s gives as the file counts them, and no other number', async (formula, expected) => {
    const written = formula
      .replace('START', '_xldudf_QT_HOLDSTART(A2:A4,B2:B4,"chelated")')
      .replace('ROWS', '_xldudf_QT_HOLDROWS(A2:A4,B2:B4,"chelated")');
    const rows = [2, 3, 4].map(
      (row) =>
        `<row r="${row}"><c r="A${row}" s="1"><v>${46_080 + row - 1462}</v></c><c r="B${row}"><v>2.1</v></c></row>`,
    );
    const sheet = `<row r="1"><c r="D1"><f>${written}</f></c></row>${rows.join('')}`;
    const fresh = await recalculated(smallWorkbook({ date1904: true, sheet }), 'log.xlsx', outside, { now: 46_086.5 });
    expect(Number(/<v>([\d.]+)<\/v>/.exec(rowsIn(fresh.bytes))?.[1])).toBe(expected);
  });

  it.each([
    ['DEATHS', 1600],
    ['INDEX(DEATHS,2,2)', 1600],
    ['IFERROR(MAX(INDEX(DEATHS,0,2)),0)', 1600],
    ['_xlfn.LET(_xlpm.d,DEATHS,SUM(INDEX(_xlpm.d,2,2),0))', 1600],
  ])('leaves 1,600 fish 1,600 in a file that counts from 1904: %s', async (formula, expected) => {
    const log = '{"When","Cu ppm","Fish in","Dead";46082,2.2,"1600 green chromis","";46084,2.2,"","1 chromis"}';
    const card = '{"Volume","200 L";"Form","chelated";"Strength",10}';
    const written = formula.replace('DEATHS', `_xldudf_QT_DEATHS(${log},${card})`).replaceAll('"', '&quot;');
    const isTable = formula === 'DEATHS';
    const kind = isTable ? ' t="array" ref="D1:K3"' : '';
    const sheet = `<row r="1"><c r="D1"><f${kind}>${written}</f></c></row>`;
    const { bytes } = await recalculated(smallWorkbook({ date1904: true, sheet }), 'log.xlsx', outside, {
      now: 46_086.5,
    });
    const value = readBook(bytes, 'log.xlsx').sheets[0]?.rows[isTable ? 1 : 0]?.[isTable ? 4 : 3]?.value;
    expect(value).toBe(expected);
  });

  it('remarks on what it could not work out', async () => {
    const bytes = withRows('<c r="D1"><f>FOO(_xldudf_QT_MGPERL(B2))</f><v>7</v></c>');
    const { bytes: same, remarks } = await recalculated(bytes, 'log.xlsx', outside, { now });
    expect(same).toBe(bytes);
    expect(remarks).toEqual(['Log!D1 keeps its stored value: the formula calls FOO, which is not supported here']);
  });

  it('takes the present moment for a cell that tells the time, leaves that cell and says so', async () => {
    const bytes = withRows(
      '<c r="E1"><f>NOW()</f><v>46083</v></c>',
      '<c r="F1"><f>_xldudf_QT_HOLDDAYS(A2:A4,B2:B4,"chelated",E1)</f><v>1</v></c>',
    );
    const fresh = await recalculated(bytes, 'log.xlsx', outside, { now: 46_085 });
    expect(rowsIn(fresh.bytes)).toBe(rowsIn(bytes).replace('<v>1</v></c></row>', '<v>3</v></c></row>'));
    expect(fresh.remarks).toEqual([
      'Log!E1 asks for the present time: the answers hold for 2026-03-04 00:00, and its own stored value stays',
    ]);
  });

  it('refuses a csv file', async () => {
    const csv = strToU8('When,Copper\n2026-03-01,2.1\n');
    await expect(recalculated(csv, 'log.csv', outside, { now })).rejects.toThrow(/^a csv file stores no formulas/);
  });

  it('recalculates an .ods file', async () => {
    const cell = (formula: string, value: number): string =>
      `<table:table-cell table:formula="of:=${formula}" office:value-type="float" office:value="${value}"><text:p>${value}</text:p></table:table-cell>`;
    const number = (value: number): string => `<table:table-cell office:value-type="float" office:value="${value}"/>`;
    const rows = `<table:table-row>${number(46_082)}${number(2.1)}<table:table-cell/>${cell('QT.HOLDDAYS([.A1:.A2];[.B1:.B2];&quot;chelated&quot;)', 9)}</table:table-row><table:table-row>${number(46_084)}${number(2.2)}</table:table-row>`;
    const bytes = smallOds(odsContentPart(rows));
    const fresh = await recalculated(bytes, 'log.ods', outside, { now });
    expect(fresh.changes.map(({ was, is, formula }) => [was, is, formula])).toEqual([
      [9, 2, 'QT.HOLDDAYS(A1:A2,B1:B2,"chelated")'],
    ]);
    expect(partIn(fresh.bytes, 'content.xml')).toMatch(/HOLDDAYS[^>]*office:value="2"/);
    expect((await recalculated(fresh.bytes, 'log.ods', outside, { now })).bytes).toBe(fresh.bytes);
  });

  it.each([
    ['one writer', byExceljs],
    ['another writer', byExcelize],
  ])('recalculates the workbook of %s, which reads the same but for the answers', async (_, made) => {
    const bytes = await made();
    const fresh = await recalculated(bytes, 'log.xlsx', outside, { now });
    expect(fresh.formulas).toBeGreaterThan(3);
    expect(fresh.changes.length).toBeGreaterThan(3);
    const before = unzipSync(bytes);
    const changed = Object.entries(unzipSync(fresh.bytes)).filter(([name, part]) => !sameBytes(part, before[name]));
    expect(changed.map(([name]) => name)).toEqual(['xl/worksheets/sheet1.xml']);
    const book = new ExcelJS.Workbook();
    await book.xlsx.load(fresh.bytes.buffer as ArrayBuffer);
    expect(book.worksheets.map(({ name }) => name)).toEqual(['Log', 'Card & rest']);
    expect((await recalculated(fresh.bytes, 'log.xlsx', outside, { now })).bytes).toBe(fresh.bytes);
    expect(await changesIn(fresh.bytes)).toEqual([]);
  });

  it.each(['tank', 'shop'] as const)('finds nothing to change in a new %s template', async (kind) => {
    const bytes = await templateBytes(kind, { bundle, now });
    const fresh = await recalculated(bytes, `${kind}.xlsx`, outside, { now });
    expect(fresh.changes).toEqual([]);
    expect(fresh.bytes).toBe(bytes);
    expect(fresh.formulas).toBeGreaterThan(3);
    expect(fresh.remarks).toEqual([]);
  });
});

function sameBytes(a: Uint8Array, b: Uint8Array | undefined): boolean {
  return b !== undefined && Buffer.compare(a, b) === 0;
}
