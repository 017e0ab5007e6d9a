import { cellRange } from '../../../src/sheet/address/cellRange';
import type { CellValue } from '../../../src/sheet/cell/cellValue';
import type { CellWrite } from '../../../src/sheet/patch/cellWrite';
import { patchXlsx } from '../../../src/sheet/patch/patchXlsx';
import { readBook } from '../../../src/sheet/read/readBook';
import { FileProblem } from '../../../src/sheet/zip/fileProblem';
import { partIn, rowsIn, sheetPart, smallWorkbook, type SmallWorkbook } from './smallWorkbook';

type Extras = Partial<Pick<CellWrite, 'formula' | 'fills' | 'dynamic' | 'isDate'>>;

function write(address: string, value: CellValue, extras: Extras = {}): CellWrite {
  const { firstRow: row, firstColumn: column } = cellRange(address);
  return { sheet: 'Log', row, column, value, ...extras };
}

/** The rows of a sheet after the writes. */
function rowsAfter(sheet: string, writes: readonly CellWrite[], rest: Omit<SmallWorkbook, 'sheet'> = {}): string {
  return rowsIn(patchXlsx(smallWorkbook({ sheet, ...rest }), writes));
}

const error = (code: string): CellValue => ({ type: 'Error', basicValue: code });

describe('patchXlsx: values', () => {
  const cell = (inner: string): string => `<row r="1">${inner}</row>`;

  it('puts a number into a formula cell and leaves the formula and every attribute', () => {
    const before = cell('<c r="A1" s="2" cm="1" ph="1"><f t="array" ref="A1">SUM(B1:B9)</f><v>3</v></c>');
    expect(rowsAfter(before, [write('A1', 0.1 + 0.2)])).toBe(before.replace('<v>3</v>', '<v>0.30000000000000004</v>'));
  });

  it.each<[CellValue, string, string]>([
    [1e21, '', '<v>1e+21</v>'],
    [-0, '', '<v>0</v>'],
    ['a & b < c', ' t="str"', '<v>a &amp; b &lt; c</v>'],
    [' kept ', ' t="str"', '<v xml:space="preserve"> kept </v>'],
    ['two\nlines', ' t="str"', '<v xml:space="preserve">two\nlines</v>'],
    ['', ' t="str"', '<v></v>'],
    [true, ' t="b"', '<v>1</v>'],
    [false, ' t="b"', '<v>0</v>'],
    [error('#N/A'), ' t="e"', '<v>#N/A</v>'],
    [error('#SPILL!'), ' t="e"', '<v>#VALUE!</v>'],
    [error('#CALC!'), ' t="e"', '<v>#VALUE!</v>'],
    [error('#BUSY!'), ' t="e"', '<v>#VALUE!</v>'],
    [null, '', ''],
    ['bell\u0007', ' t="str"', '<v>bell_x0007_</v>'],
    ['cr\r', ' t="str"', '<v>cr_x000D_</v>'],
    ['_x0041_', ' t="str"', '<v>_x005F_x0041_</v>'],
    ['_x0041_x0042_', ' t="str"', '<v>_x005F_x0041_x005F_x0042_</v>'],
    ['_x0041\u0007', ' t="str"', '<v>_x005F_x0041_x0007_</v>'],
    ['half \ud83d', ' t="str"', '<v>half _xD83D_</v>'],
    ['whole \u{1f41f}', ' t="str"', '<v>whole \u{1f41f}</v>'],
  ])('stores %p of a formula cell', (value, type, content) => {
    const before = cell('<c r="A1"><f>X()</f><v>99</v></c><c r="B1"><v>5</v></c>');
    const after = cell(`<c r="A1"${type}><f>X()</f>${content}</c><c r="B1"><v>5</v></c>`);
    expect(rowsAfter(before, [write('A1', value)])).toBe(after);
  });

  it('stores typed text in the cell itself', () => {
    expect(rowsAfter(cell('<c r="A1" s="2"/>'), [write('A1', ' fish')])).toBe(
      cell('<c r="A1" s="2" t="inlineStr"><is><t xml:space="preserve"> fish</t></is></c>'),
    );
  });

  it('stores text that an array formula fills in as a result', () => {
    const before = cell(
      '<c r="A1" cm="1"><f t="array" ref="A1:B1">X()</f><v>1</v></c><c r="B1"><v>2</v></c><c r="C1"><v>2</v></c>',
    );
    const writes = [write('B1', 'in'), write('C1', 'out')];
    expect(rowsAfter(before, writes)).toBe(
      cell(
        '<c r="A1" cm="1"><f t="array" ref="A1:B1">X()</f><v>1</v></c><c r="B1" t="str"><v>in</v></c><c r="C1" t="inlineStr"><is><t>out</t></is></c>',
      ),
    );
  });

  it('takes the mark of a rich value away with the value, and keeps that of the cell', () => {
    const before = cell(`<c r="A1" s="1" t="e" vm="2" cm='1'><f t='array' ref="A1">X()</f><v>#VALUE!</v></c>`);
    const after = cell(`<c r="A1" s="1" cm='1'><f t='array' ref="A1">X()</f><v>4</v></c>`);
    expect(rowsAfter(before, [write('A1', 4)])).toBe(after);
    expect(rowsAfter(before, [write('A1', error('#VALUE!'))])).toBe(before.replace(' vm="2"', ''));
  });

  it('changes no byte where the value stands there already, in whatever form', () => {
    const before =
      '<row r="1"><c r="A1"><v>3.0</v></c><c r="B1" t="s"><v>0</v></c><c r="C1" t="inlineStr"><is><r><t>ri</t></r> <r><t>ch</t></r><rPh sb="0" eb="1"><t>no</t></rPh></is></c>' +
      '<c r="D1" t="b"><v>true</v></c><c r="E1" t="e"><v>#N/A</v></c><c r="F1" t="str"><f>G()</f><v>_x0041_</v></c><c r="G1" s="1"/><c r="H1" t="d"><v>2026-03-01T12:00:00</v></c>' +
      '<c r="I1" t="s"><v>1</v></c><c r="J1"><v><![CDATA[7]]></v></c></row>';
    const bytes = smallWorkbook({ sheet: before, strings: ['<t>plain</t>', '<r><t>two </t></r><r><t>runs</t></r>'] });
    const values: CellValue[] = [3, 'plain', 'rich', true, error('#N/A'), 'A', null, 46082.5, 'two runs', 7];
    const writes = values.map((value, column): CellWrite => ({ sheet: 'Log', row: 0, column, value }));
    expect(patchXlsx(bytes, writes)).toBe(bytes);
  });

  it('writes over a shared text, an inline text and a date in ISO form', () => {
    const before = cell(
      '<c r="A1" t="s"><v>0</v></c><c r="B1" t="inlineStr"><is><t>x</t></is></c><c r="C1" t="d"><v>2026-03-01</v></c>',
    );
    expect(rowsAfter(before, [write('A1', 1), write('B1', 2), write('C1', 46083.25)], { strings: ['<t>x</t>'] })).toBe(
      cell('<c r="A1"><v>1</v></c><c r="B1"><v>2</v></c><c r="C1" t="d"><v>2026-03-02T06:00:00</v></c>'),
    );
  });

  it('stores a number that is no day as a number, also where days stood', () => {
    expect(rowsAfter(cell('<c r="A1" t="d"><v>2026-03-01</v></c>'), [write('A1', 1e300)])).toBe(
      cell('<c r="A1"><v>1e+300</v></c>'),
    );
  });

  it('takes the last of several writes to one cell', () => {
    expect(rowsAfter(cell('<c r="A1"><v>1</v></c>'), [write('A1', 2), write('A1', 3)])).toBe(
      cell('<c r="A1"><v>3</v></c>'),
    );
  });

  it('refuses a text longer than a cell holds, and a sheet that is not there', () => {
    const bytes = smallWorkbook({ sheet: '' });
    expect(() => patchXlsx(bytes, [write('A1', 'x'.repeat(32_768))])).toThrow(FileProblem);
    expect(() => patchXlsx(bytes, [{ ...write('A1', 1), sheet: 'Card' }])).toThrow(
      'There is no sheet "Card" in the file; name one of its sheets: "Log".',
    );
  });
});

describe('patchXlsx: cells and rows that are missing', () => {
  it('puts cells in by their column and rows by their number', () => {
    const before = '<row r="2" spans="2:4"><c r="B2"><v>1</v></c><c r="D2"><v>2</v></c></row><row r="5"/>';
    const writes = ['F2', 'C2', 'A2', 'A7', 'B4', 'A4', 'C5', 'A1'].map((address, index) => write(address, index));
    expect(rowsAfter(before, writes)).toBe(
      '<row r="1"><c r="A1"><v>7</v></c></row>' +
        '<row r="2" spans="1:6"><c r="A2"><v>2</v></c><c r="B2"><v>1</v></c><c r="C2"><v>1</v></c><c r="D2"><v>2</v></c><c r="F2"><v>0</v></c></row>' +
        '<row r="4"><c r="A4"><v>5</v></c><c r="B4"><v>4</v></c></row><row r="5"><c r="C5"><v>6</v></c></row><row r="7"><c r="A7"><v>3</v></c></row>',
    );
  });

  it('counts rows and cells without an address from those before them', () => {
    const before =
      '<row><c><v>1</v></c><c><v>2</v></c></row><row r="4"><c r="C4"><v>3</v></c><c><v>4</v></c></row><row><c/></row>';
    const writes = [write('B1', 20), write('D4', 40), write('A5', 50), write('A4', 30), write('C1', 10)];
    expect(rowsAfter(before, writes)).toBe(
      '<row><c><v>1</v></c><c><v>20</v></c><c r="C1"><v>10</v></c></row>' +
        '<row r="4"><c r="A4"><v>30</v></c><c r="C4"><v>3</v></c><c><v>40</v></c></row><row><c><v>50</v></c></row>',
    );
  });

  it('fills a sheet without rows and grows its dimension', () => {
    const sheet = sheetPart('').replace('<sheetData></sheetData>', '<dimension ref="A1"/><sheetData />');
    const after = partIn(
      patchXlsx(smallWorkbook({ sheet }), [write('B2', 1), write('C1', 2)]),
      'xl/worksheets/sheet1.xml',
    );
    expect(after).toBe(
      sheet.replace(
        '<dimension ref="A1"/><sheetData />',
        '<dimension ref="A1:C2"/><sheetData><row r="1"><c r="C1"><v>2</v></c></row><row r="2"><c r="B2"><v>1</v></c></row></sheetData>',
      ),
    );
  });

  it('gives a new cell the style of its row or column', () => {
    const sheet = sheetPart('<row r="1" s="2" customFormat="1"/><row r="2" s="2"/>').replace(
      '<sheetData>',
      '<cols><col min="2" max="3" style="1"/></cols><sheetData>',
    );
    expect(
      rowsIn(patchXlsx(smallWorkbook({ sheet }), [write('B1', 1), write('C2', 2), write('D2', 3), write('B3', 4)])),
    ).toBe(
      '<row r="1" s="2" customFormat="1"><c r="B1" s="2"><v>1</v></c></row><row r="2" s="2"><c r="C2" s="1"><v>2</v></c><c r="D2"><v>3</v></c></row>' +
        '<row r="3"><c r="B3" s="1"><v>4</v></c></row>',
    );
  });

  it('takes an emptied cell without a style away, unless another one counts from it', () => {
    expect(
      rowsAfter('<row r="1"><c r="A1"><v>1</v></c><c r="B1" s="1"><v>2</v></c></row>', [
        write('A1', null),
        write('B1', null),
      ]),
    ).toBe('<row r="1"><c r="B1" s="1"/></row>');
    expect(rowsAfter('<row r="1"><c r="A1"><v>1</v></c><c><v>2</v></c></row>', [write('A1', null)])).toBe(
      '<row r="1"><c r="A1"/><c><v>2</v></c></row>',
    );
  });

  it('puts nothing in for a blank', () => {
    const bytes = smallWorkbook({ sheet: '<row r="1"/>' });
    expect(patchXlsx(bytes, [write('A1', null), write('C9', null)])).toBe(bytes);
  });
});

describe('patchXlsx: the way the XML is written', () => {
  it('is not fooled by comments, CDATA, instructions, quotes, prefixes and signs in attributes', () => {
    const data =
      `<!-- <c r="A1"><v>9</v></c> --><x:row r='1' note="a > b"><?keep <c r="A1"/>?><x:c\n  r = 'A1' s='1'  t="str" ><x:f><![CDATA[IF(B1<1,"</c>","<v>")]]></x:f><!-- v --><x:v >old</x:v ></x:c >` +
      `<x:c r="B1"><x:v>1</x:v></x:c></x:row >`;
    const sheet = `<?xml version="1.0"?>\n<x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x:sheetData>${data}</x:sheetData></x:worksheet>`;
    const after = partIn(
      patchXlsx(smallWorkbook({ sheet }), [write('A1', 5), write('C1', 'new'), write('A2', 6)]),
      'xl/worksheets/sheet1.xml',
    );
    expect(after).toBe(
      sheet
        .replace('  t="str" >', ' >')
        .replace('<x:v >old</x:v ></x:c >', '<x:v>5</x:v></x:c>')
        .replace('</x:row >', '<x:c r="C1" t="inlineStr"><x:is><x:t>new</x:t></x:is></x:c></x:row >')
        .replace('</x:sheetData>', '<x:row r="2"><x:c r="A2"><x:v>6</x:v></x:c></x:row></x:sheetData>'),
    );
  });

  it('keeps a byte order mark, letters of every width and the ends of lines', () => {
    const sheet = `\uFEFF${sheetPart('<row r="1">\r\n<c r="A1" t="str"><v>\u{1f41f} \u00e9 \u6f22</v></c><c r="B1"><v>1</v></c>\r\n</row>')}`;
    const bytes = smallWorkbook({ sheet: new TextEncoder().encode(sheet) });
    expect(partIn(patchXlsx(bytes, [write('B1', 2)]), 'xl/worksheets/sheet1.xml')).toBe(
      sheet.replace('<v>1</v>', '<v>2</v>'),
    );
  });

  it.each(['utf16le', 'utf16be'])('keeps a part in %s as it is', (encoding) => {
    const text = `\uFEFF${sheetPart('<row r="1"><c r="A1"><v>1</v></c><c r="B1" t="str"><v>\u{1f41f}</v></c></row>').replace('UTF-8', 'UTF-16')}`;
    const encoded = (from: string): Buffer =>
      encoding === 'utf16le' ? Buffer.from(from, 'utf16le') : Buffer.from(from, 'utf16le').swap16();
    const after = patchXlsx(smallWorkbook({ sheet: encoded(text) }), [write('A1', 2)]);
    const expected = smallWorkbook({ sheet: encoded(text.replace('<v>1</v>', '<v>2</v>')) });
    expect(partIn(after, 'xl/worksheets/sheet1.xml')).toBe(partIn(expected, 'xl/worksheets/sheet1.xml'));
    expect(readBook(after, 'log.xlsx').sheets[0]?.rows[0]?.map((cell) => cell?.value)).toEqual([2, '\u{1f41f}']);
  });

  it.each([
    ['an encoding it cannot write', Buffer.from(sheetPart('').replace('UTF-8', 'ISO-8859-1'), 'latin1')],
    ['bytes that are no text', Buffer.concat([Buffer.from(sheetPart('')), Buffer.from([0xff, 0xfe, 0xff])])],
    ['tags that do not close', Buffer.from(sheetPart('<row r="1"><c r="A1"></row>'))],
    ['a document type', Buffer.from(sheetPart('').replace('<worksheet', '<!DOCTYPE x><worksheet'))],
    ['an address that is none', Buffer.from(sheetPart('<row r="1"><c r="here"/></row>'))],
    ['a row that is none', Buffer.from(sheetPart('<row r="one"><c r="A1"/></row>'))],
  ])('refuses %s', (_, sheet) => {
    expect(() => patchXlsx(smallWorkbook({ sheet }), [write('A1', 1)])).toThrow(FileProblem);
  });
});

describe('patchXlsx: formulas', () => {
  it('changes what an array formula fills where it grew or shrank, and leaves it where not', () => {
    const before = '<row r="1"><c r="A1" cm="1"><f ref="A1:B3" t="array" aca="1">X()</f><v>1</v></c></row>';
    expect(rowsAfter(before, [write('A1', 1, { fills: cellRange('A1:C9') })])).toBe(before.replace('A1:B3', 'A1:C9'));
    expect(rowsAfter(before, [write('A1', 2, { fills: cellRange('A1:B3') })])).toBe(before.replace('<v>1', '<v>2'));
    expect(rowsAfter(before, [write('A1', error('#N/A'), { fills: cellRange('A1') })])).toBe(
      '<row r="1"><c r="A1" cm="1" t="e"><f ref="A1" t="array" aca="1">X()</f><v>#N/A</v></c></row>',
    );
  });

  it('takes a formula away where a value is typed over it, and with it the list of formulas', () => {
    const before = '<row r="1"><c r="A1" s="1" cm="1"><f t="array" ref="A1">X()</f><v>1</v></c></row>';
    const bytes = smallWorkbook({ sheet: before, calcChain: '<c r="A1" i="1"/>', metadata: dynamicMetadata });
    const after = patchXlsx(bytes, [write('A1', 7, { formula: null })]);
    expect(rowsIn(after)).toBe('<row r="1"><c r="A1" s="1"><v>7</v></c></row>');
    expect(() => partIn(after, 'xl/calcChain.xml')).toThrow('no part');
    for (const part of ['[Content_Types].xml', 'xl/_rels/workbook.xml.rels'])
      expect(partIn(after, part)).not.toMatch(/calcChain/);
    expect(partIn(after, 'xl/metadata.xml')).toBe(dynamicMetadata);
    expect(partIn(patchXlsx(bytes, [write('A1', 7)]), 'xl/calcChain.xml')).toMatch(/r="A1"/);
  });

  it('writes a plain formula, an array of fixed size and a dynamic one', () => {
    const writes = [
      write('A1', 3, { formula: 'IF(B1<1,"a&b",3)' }),
      write('B1', 'x', { formula: '=X()', fills: cellRange('B1:B2') }),
      write('B2', 'y'),
      write('C1', 4, { formula: 'Y()', fills: cellRange('C1:D2'), dynamic: true }),
      write('E1', 4, { formula: ' Z()', dynamic: true }),
    ];
    const after = patchXlsx(smallWorkbook({ sheet: '<row r="1"><c r="A1" s="1"><v>8</v></c></row>' }), writes);
    expect(rowsIn(after)).toBe(
      '<row r="1"><c r="A1" s="1"><f>IF(B1&lt;1,"a&amp;b",3)</f><v>3</v></c><c r="B1" t="str"><f t="array" ref="B1:B2">X()</f><v>x</v></c>' +
        '<c r="C1" cm="1"><f t="array" ref="C1:D2">Y()</f><v>4</v></c><c r="E1" cm="1"><f t="array" ref="E1" xml:space="preserve"> Z()</f><v>4</v></c></row>' +
        '<row r="2"><c r="B2" t="str"><v>y</v></c></row>',
    );
    const again = patchXlsx(after, writes);
    expect(again).toBe(after);
    const cells = readBook(after, 'log.xlsx').sheets[0]?.rows[0];
    expect(cells?.[2]).toEqual({ value: 4, formula: 'Y()', fills: cellRange('C1:D2'), dynamic: true });
  });

  it('keeps how a formula is stored where the write does not say', () => {
    const before = '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A2">X()</f><v>1</v></c></row>';
    expect(rowsAfter(before, [write('A1', 2, { formula: 'X()' })])).toBe(before.replace('<v>1', '<v>2'));
    expect(rowsAfter(before, [write('A1', 1, { formula: 'X()', dynamic: false })])).toBe(
      '<row r="1"><c r="A1"><f>X()</f><v>1</v></c></row>',
    );
  });

  it('hands a shared formula on where its first cell gets another', () => {
    const before =
      '<row r="1"><c r="A1"><f t="shared" ref="A1:A4" si="0">B1*$C$1+"B1"</f><v>1</v></c></row><row r="2"><c r="A2"><f t="shared" si="0"/><v>2</v></c></row>' +
      '<row r="3"><c r="A3"><f t="shared" si="0"/><v>3</v></c></row><row r="4"><c r="A4"><f t="shared" si="0"></f><v>4</v></c></row>';
    const after = (writes: readonly CellWrite[]): string => rowsAfter(before, writes);
    const heir = (ref: string, row: number): string => `<f t="shared" ref="${ref}" si="0">B${row}*$C$1+"B1"</f>`;
    expect(after([write('A1', 9, { formula: null })])).toBe(
      before
        .replace(/<c r="A1">.*?<\/c>/, '<c r="A1"><v>9</v></c>')
        .replace('<f t="shared" si="0"/>', '<f t="shared" si="0" ref="A2:A4">B2*$C$1+"B1"</f>'),
    );
    expect(after([write('A1', 9, { formula: 'X()' }), write('A2', 8, { formula: null }), write('A3', 7)])).toBe(
      before
        .replace(/<f t="shared" ref.*?<\/f><v>1/, '<f>X()</f><v>9')
        .replace('<f t="shared" si="0"/><v>2', '<v>8')
        .replace(
          '<f t="shared" si="0"/><v>3',
          `${heir('A3:A4', 3).replace(/ ref="[^"]*" si="0"/, ' si="0" ref="A3:A4"')}<v>7`,
        ),
    );
    expect(after([write('A1', 1, { formula: 'B1*$C$1+"B1"' }), write('A3', 3, { formula: 'B3*$C$1+"B1"' })])).toBe(
      before,
    );
  });
});

const dynamicMetadata =
  '<?xml version="1.0"?><metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray">' +
  '<metadataTypes count="1"><metadataType name="XLDAPR" cellMeta="1"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}">' +
  '<xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';

describe('patchXlsx: dates', () => {
  const before = '<row r="1"><c r="A1" s="1"><v>100</v></c><c r="B1" s="2"><v>100</v></c></row>';

  it('counts days as the file does', () => {
    expect(rowsAfter(before, [write('A1', 46082.5), write('B1', 46082.5)], { date1904: true })).toBe(
      '<row r="1"><c r="A1" s="1"><v>44620.5</v></c><c r="B1" s="2"><v>46082.5</v></c></row>',
    );
    const bytes = smallWorkbook({ sheet: before, date1904: true });
    const read = readBook(patchXlsx(bytes, [write('A1', 46082.5)]), 'log.xlsx');
    expect(read.sheets[0]?.rows[0]?.[0]?.value).toBe(46082.5);
    expect(patchXlsx(bytes, [write('A1', 1562)])).toBe(bytes);
  });

  it('gives a cell without one a date format where asked, like its own style in all else', () => {
    const bytes = smallWorkbook({ sheet: before });
    const writes = [
      write('A1', 46082, { isDate: true }),
      write('B1', 46082.5, { isDate: true }),
      write('C1', 46083.5, { isDate: true }),
      write('D1', 46083),
    ];
    const after = patchXlsx(bytes, writes);
    expect(rowsIn(after)).toBe(
      '<row r="1"><c r="A1" s="1"><v>46082</v></c><c r="B1" s="3"><v>46082.5</v></c><c r="C1" s="4"><v>46083.5</v></c><c r="D1"><v>46083</v></c></row>',
    );
    const styles = partIn(after, 'xl/styles.xml');
    expect(styles).toContain(
      '<numFmts count="1"><numFmt numFmtId="164" formatCode="yyyy-mm-dd hh:mm"/></numFmts><fonts',
    );
    expect(styles).toContain(
      '<cellXfs count="5">' +
        '<xf numFmtId="0" fontId="0"/><xf numFmtId="14" fontId="1"/><xf numFmtId="2" fontId="1"><alignment wrapText="1"/></xf>' +
        '<xf numFmtId="164" fontId="1" applyNumberFormat="1"><alignment wrapText="1"/></xf><xf numFmtId="164" fontId="0" applyNumberFormat="1"/></cellXfs>',
    );
    expect(patchXlsx(after, writes)).toBe(after);
  });

  it('makes no second format where the file has it, and fills an empty list of formats', () => {
    const dated = [write('B1', 46082, { isDate: true })];
    const list = (inner: string): SmallWorkbook => ({ sheet: before, beforeFonts: inner });
    const styles = (given: SmallWorkbook): string => partIn(patchXlsx(smallWorkbook(given), dated), 'xl/styles.xml');
    const there = '<numFmts count="1"><numFmt numFmtId="170" formatCode="yyyy-mm-dd"/></numFmts>';
    expect(styles(list(there))).toContain(`${there}<fonts`);
    expect(styles(list(there))).toContain('<xf numFmtId="170" fontId="1" applyNumberFormat="1">');
    expect(styles(list('<numFmts count="0" />'))).toContain(
      '<numFmts count="1"><numFmt numFmtId="164" formatCode="yyyy-mm-dd"/></numFmts><fonts',
    );
  });
});
