import { readBook } from '../../../src/sheet/read/readBook';
import { refusal } from '../zip/refusal';
import { cellAt, valuesOf } from './values';
import { spreadsheetNamespace, xlsxOf, type XlsxPlan, zipped } from './xlsxOf';

const book = (plan: XlsxPlan) => readBook(xlsxOf(plan), 'log.xlsx');
const rows = (sheetData: string, more: Partial<XlsxPlan> = {}) => book({ sheets: { Log: sheetData }, ...more });

describe('readBook on .xlsx: values', () => {
  it('reads every kind of value', () => {
    const read = rows(
      `<row r="1"><c r="A1"><v>2.15</v></c><c r="B1" t="n"><v>1e-3</v></c><c r="C1" t="s"><v>1</v></c>
       <c r="D1" t="str"><f>X1</f><v>text</v></c><c r="E1" t="b"><v>1</v></c><c r="F1" t="b"><v>0</v></c>
       <c r="G1" t="e"><v>#N/A</v></c><c r="H1" t="inlineStr"><is><t>in line</t></is></c><c r="I1" s="1"/><c r="J1"/>
       <c r="K1" t="d"><v>2026-03-29T02:30:00</v></c><c r="L1" t="str"><f>""</f><v></v></c></row>`,
      { strings: '<si><t>none</t></si><si><t>copper &amp; ÄÖ</t></si>', formats: ['0.00'] },
    );
    expect(valuesOf(read)).toEqual({
      A1: 2.15,
      B1: 0.001,
      C1: 'copper & ÄÖ',
      D1: 'text',
      E1: true,
      F1: false,
      G1: { type: 'Error', basicValue: '#N/A' },
      H1: 'in line',
      I1: null,
      K1: 46110 + 2.5 / 24,
      L1: '',
    });
    expect(cellAt(read, 'I1')).toEqual({ value: null, format: '0.00' });
    expect(cellAt(read, 'K1')?.format).toBe('yyyy-mm-dd hh:mm');
  });

  it.each(['#SPILL!', '#BUSY!', '#CALC!', '#CONNECT!', '#NAME?', '#DIV/0!'])('keeps the error %s', (error) => {
    const read = rows(`<row r="1"><c r="A1" t="e"><f>X()</f><v>${error}</v></c></row>`);
    expect(cellAt(read, 'A1')).toEqual({ value: { type: 'Error', basicValue: error }, formula: 'X()' });
  });

  it('puts rich text together and leaves out how it is read aloud', () => {
    const strings =
      '<si><r><rPr><b/></rPr><t>day </t></r><r><t xml:space="preserve"> three</t></r><rPh sb="0" eb="1"><t>DEI</t></rPh></si>' +
      '<si><t>two_x000a_lines, _x005F_x000a_ as it stands, _xyz_</t></si><si/>';
    const read = rows(
      '<row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1" t="s"><v>1</v></c><c r="C1" t="s"><v>2</v></c></row>',
      {
        strings,
      },
    );
    expect(valuesOf(read)).toEqual({ A1: 'day  three', B1: 'two\nlines, _x000a_ as it stands, _xyz_', C1: '' });
  });

  it('reads inline rich text, character data and comments as XML has them', () => {
    const read = rows(
      '<row r="1"><c r="A1" t="inlineStr"><is><r><t>a</t></r><r><t>b</t></r></is></c><!-- <c r="B1"><v>9</v></c> -->' +
        '<c r="C1" t="str"><v><![CDATA[a<b & c]]></v></c></row>',
    );
    expect(valuesOf(read)).toEqual({ A1: 'ab', C1: 'a<b & c' });
  });

  it('counts rows and cells that do not say where they are', () => {
    const read = rows(
      '<row><c><v>1</v></c><c><v>2</v></c></row><row r="5"><c><v>3</v></c></row><row><c r="C6"><v>4</v></c><c><v>5</v></c></row>',
    );
    expect(valuesOf(read)).toEqual({ A1: 1, B1: 2, A5: 3, C6: 4, D6: 5 });
  });

  it('keeps a number that is none as the text it is', () => {
    expect(valuesOf(rows('<row r="1"><c r="A1"><v>1e999</v></c><c r="B1"><v>NaN</v></c></row>'))).toEqual({
      A1: '1e999',
      B1: 'NaN',
    });
  });

  it('reads a lone cell in the last corner at once and stays sparse', () => {
    const start = performance.now();
    const read = rows('<row r="1"><c r="A1"><v>1</v></c></row><row r="1048576"><c r="XFD1048576"><v>7</v></c></row>');
    expect(performance.now() - start).toBeLessThan(5000);
    expect(cellAt(read, 'XFD1048576')?.value).toBe(7);
    expect(Object.keys(read.sheets[0]!.rows)).toEqual(['0', '1048575']);
  });

  it('refuses a cell where no sheet has one, and a text that is missing', () => {
    expect(refusal(() => rows('<row r="1048577"><c r="A1048577"><v>1</v></c></row>'))).toContain('no place of a sheet');
    expect(refusal(() => rows('<row r="1048577"><c><v>1</v></c></row>'))).toContain('beyond XFD1048576');
    expect(refusal(() => rows('<row r="x"><c><v>1</v></c></row>'))).toContain('no place of a sheet');
    expect(refusal(() => rows('<row r="1"><c r="A1" t="s"><v>4</v></c></row>'))).toContain('text that is missing');
  });
});

describe('readBook on .xlsx: formulas', () => {
  it('tells a formula that was never computed from one that gives 0', () => {
    const read = rows(
      '<row r="1"><c r="A1"><f>1-1</f><v>0</v></c><c r="B1"><f>1+1</f></c><c r="C1" t="str"><f>=A1&amp;"x"</f></c></row>',
    );
    expect(cellAt(read, 'A1')).toEqual({ value: 0, formula: '1-1' });
    expect(cellAt(read, 'B1')).toEqual({ value: null, formula: '1+1' });
    expect(cellAt(read, 'C1')).toEqual({ value: null, formula: 'A1&"x"' });
  });

  it('keeps array formulas with what they fill, and says which may grow', () => {
    const metadata =
      `<metadata xmlns="${spreadsheetNamespace}"><metadataTypes count="2"><metadataType name="XLRICHVALUE"/><metadataType name="XLDAPR"/></metadataTypes>` +
      '<cellMetadata count="2"><bk><rc t="1" v="0"/></bk><bk><rc t="2" v="0"/></bk></cellMetadata></metadata>';
    const read = rows(
      '<row r="1"><c r="A1" cm="2"><f t="array" ref="A1:B2">_xldudf_QT_HOLDROWS(D1:D9)</f><v>1</v></c><c r="B1"><v>2</v></c>' +
        `<c r="C1"><f t='array' ref='C1:C2'>D1:D2*2</f><v>3</v></c><c r="D1" cm="1"><f t="array" ref="D1">X()</f><v>4</v></c></row>` +
        '<row r="2"><c r="A2"/><c r="B2"><v>5</v></c></row>',
      { metadata },
    );
    const fills = { firstRow: 0, firstColumn: 0, lastRow: 1, lastColumn: 1 };
    expect(cellAt(read, 'A1')).toEqual({ value: 1, formula: '_xldudf_QT_HOLDROWS(D1:D9)', fills, dynamic: true });
    expect(cellAt(read, 'B1')).toEqual({ value: 2 });
    expect(cellAt(read, 'C1')).toEqual({
      value: 3,
      formula: 'D1:D2*2',
      fills: { firstRow: 0, firstColumn: 2, lastRow: 1, lastColumn: 2 },
    });
    expect(cellAt(read, 'D1')?.dynamic).toBeUndefined();
    expect(cellAt(read, 'A2')).toBeUndefined();
  });

  it('spells out a formula that cells share', () => {
    const read = rows(
      '<row r="1"><c r="A1"><f t="shared" ref="A1:B3" si="0">IF(C1="C1",LOG10($C1),\'C1 D1\'!C$1)&amp;"x ""C1"</f><v>1</v></c></row>' +
        '<row r="3"><c r="A3"><f t="shared" si="0"/><v>2</v></c><c r="B3"><f t="shared" si="0"></f><v>3</v></c><c r="C3"><f t="shared" si="7"/><v>4</v></c></row>',
    );
    expect(cellAt(read, 'A3')?.formula).toBe(`IF(C3="C1",LOG10($C3),'C1 D1'!C$1)&"x ""C1"`);
    expect(cellAt(read, 'B3')?.formula).toBe(`IF(D3="C1",LOG10($C3),'C1 D1'!D$1)&"x ""C1"`);
    expect(cellAt(read, 'C3')).toEqual({ value: 4 });
  });

  it('refuses to spell out a long formula without end', () => {
    const shared = '<c><f t="shared" si="0"/></c>'.repeat(9000);
    const long = `"${'x'.repeat(8000)}"`;
    const sheet = `<row r="1"><c r="A1"><f t="shared" ref="A1:B3" si="0">${long}</f></c>${shared}</row>`;
    expect(refusal(() => rows(sheet))).toContain('repeats a long formula');
  });
});

describe('readBook on .xlsx: what surrounds the cells', () => {
  it('gives number formats, built in or own, and none for the general one', () => {
    const styles =
      `<styleSheet xmlns="${spreadsheetNamespace}"><numFmts><numFmt numFmtId="164" formatCode="yyyy\\-mm\\-dd hh:mm"/><numFmt numFmtId="165" formatCode="General"/></numFmts>` +
      '<cellStyleXfs><xf numFmtId="9"/></cellStyleXfs><cellXfs><xf numFmtId="0"/><xf numFmtId="164"/><xf numFmtId="10"/><xf numFmtId="165"/><xf/></cellXfs></styleSheet>';
    const cells = [0, 1, 2, 3, 4, 99].map((style) => `<c s="${style}"><v>1</v></c>`).join('');
    const read = rows(`<row r="1">${cells}</row>`, { parts: { 'xl/styles.xml': styles } });
    expect(read.sheets[0]!.rows[0]!.map((cell) => cell?.format)).toEqual([
      undefined,
      'yyyy\\-mm\\-dd hh:mm',
      '0.00%',
      undefined,
      undefined,
      undefined,
    ]);
  });

  it('gives merged ranges, widths and hidden sheets', () => {
    const read = book({
      sheets: { Log: '<row r="1"><c r="A1"><v>1</v></c><c r="D1"><v>1</v></c></row>', Old: '', Locked: '' },
      before:
        '<cols><col min="1" max="1" width="10.7109375" customWidth="1"/><col min="3" max="16384" width="8"/></cols>',
      after: '<mergeCells><mergeCell ref="A8:C9"/><mergeCell ref="oops"/></mergeCells>',
      parts: {
        'xl/workbook.xml':
          `<workbook xmlns="${spreadsheetNamespace}" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets>` +
          '<sheet name="Log" r:id="rId1"/><sheet name="Old" r:id="rId2" state="hidden"/><sheet name="Locked" r:id="rId3" state="veryHidden"/></sheets></workbook>',
      },
    });
    expect(read.sheets[0]!.merged).toEqual([{ firstRow: 7, firstColumn: 0, lastRow: 8, lastColumn: 2 }]);
    expect(read.sheets[0]!.widths).toEqual([75, undefined, 56, 56]);
    expect(read.sheets.map((sheet) => [sheet.name, sheet.hidden])).toEqual([
      ['Log', false],
      ['Old', true],
      ['Locked', true],
    ]);
  });

  it('gives names with their sheet and leaves out those of programs', () => {
    const names =
      '<definedName name="copper">Log!$C$2:$C$60</definedName><definedName name="card" localSheetId="1">\'Q 2\'!$A$1&amp;""</definedName>' +
      '<definedName name="_xlnm.Print_Area" localSheetId="0">Log!$A$1</definedName><definedName name="_xlfn.IFS" hidden="1">#NAME?</definedName>';
    expect(book({ sheets: { Log: '', 'Q 2': '' }, names }).names).toEqual([
      { name: 'copper', formula: 'Log!$C$2:$C$60' },
      { name: 'card', formula: `'Q 2'!$A$1&""`, sheet: 'Q 2' },
    ]);
  });

  it('gives named tables with their columns', () => {
    const table = (rest: string) =>
      `<table id="1" name="t" displayName="Readings" ref="A3:B9" ${rest}><tableColumns><tableColumn name="Time"/><tableColumn name="Copper_x000a_mg/L"/></tableColumns></table>`;
    const range = { firstRow: 2, firstColumn: 0, lastRow: 8, lastColumn: 1 };
    const columns = ['Time', 'Copper\nmg/L'];
    const tables = book({
      sheets: { Log: '' },
      tables: [table(''), table('headerRowCount="0" totalsRowCount="1"')],
    }).tables;
    expect(tables).toEqual([
      { name: 'Readings', sheet: 'Log', range, columns, headings: true, totals: false },
      { name: 'Readings', sheet: 'Log', range, columns, headings: false, totals: true },
    ]);
  });

  it('reads prefixed names, absolute targets and the strict edition', () => {
    const plain = xlsxOf({ sheets: { Log: '' }, absolute: true });
    expect(readBook(plain, '').sheets[0]?.name).toBe('Log');
    const prefixed = (namespace: string, relations: string) =>
      rows('', {
        parts: {
          'xl/workbook.xml': `<x:workbook xmlns:x="${namespace}" xmlns:q="${relations}"><x:sheets><x:sheet name="Log" q:id="rId1"/></x:sheets></x:workbook>`,
          'xl/worksheets/sheet1.xml': `<x:worksheet xmlns:x="${namespace}"><x:sheetData><x:row r="2"><x:c r="B2"><x:f>1+1</x:f><x:v>2</x:v></x:c><other:c xmlns:other="urn:o" r="C2"><x:v>9</x:v></other:c></x:row></x:sheetData></x:worksheet>`,
        },
      });
    const transitional = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
    for (const read of [
      prefixed(spreadsheetNamespace, transitional),
      prefixed(
        'http://purl.oclc.org/ooxml/spreadsheetml/main',
        'http://purl.oclc.org/ooxml/officeDocument/relationships',
      ),
    ]) {
      expect(read.sheets[0]!.rows[1]).toEqual([undefined, { value: 2, formula: '1+1' }]);
    }
  });

  it('leaves out sheets without cells, and counts them where names count sheets', () => {
    const types = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
    const read = book({
      sheets: { Chart: '', Log: '' },
      names: '<definedName name="here" localSheetId="1">Log!$A$1</definedName>',
      parts: {
        'xl/_rels/workbook.xml.rels': `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${types}/chartsheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="${types}/worksheet" Target="worksheets/sheet2.xml"/></Relationships>`,
      },
    });
    expect(read.sheets.map((sheet) => sheet.name)).toEqual(['Log']);
    expect(read.names).toEqual([{ name: 'here', formula: 'Log!$A$1', sheet: 'Log' }]);
  });

  it('reads parts in UTF-16 and in an older encoding', () => {
    const sheet = `<?xml version="1.0" encoding="UTF-16"?><worksheet xmlns="${spreadsheetNamespace}"><sheetData><row r="1"><c r="A1" t="str"><v>größe</v></c></row></sheetData></worksheet>`;
    for (const [start, at] of [
      [[0xff, 0xfe], 'le'],
      [[], 'le'],
      [[0xfe, 0xff], 'be'],
    ] as const) {
      const bytes = Buffer.from(sheet, 'utf16le');
      const part = Uint8Array.from([...start, ...(at === 'be' ? bytes.swap16() : bytes)]);
      expect(valuesOf(rows('', { parts: { 'xl/worksheets/sheet1.xml': part } }))).toEqual({ A1: 'größe' });
    }
    const latin = Uint8Array.from(Buffer.from(sheet.replace('UTF-16', 'ISO-8859-1'), 'latin1'));
    expect(valuesOf(rows('', { parts: { 'xl/worksheets/sheet1.xml': latin } }))).toEqual({ A1: 'größe' });
    const broken = Uint8Array.from(Buffer.from(sheet.replace('UTF-16', 'UTF-8'), 'latin1'));
    expect(refusal(() => rows('', { parts: { 'xl/worksheets/sheet1.xml': broken } }))).toContain('not well-formed');
    const unknown = sheet.replace('UTF-16', 'rot-13');
    expect(refusal(() => rows('', { parts: { 'xl/worksheets/sheet1.xml': unknown } }))).toContain(
      'an encoding that is not known here',
    );
  });

  it('takes capital letters in the names of parts for what they are', () => {
    const bytes = zipped({
      'XL/Workbook.xml': `<workbook xmlns="${spreadsheetNamespace}" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets><sheet name="Log" r:id="a"/></sheets></workbook>`,
      'xl/_rels/workbook.xml.rels':
        '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="a" Type="x/worksheet" Target="Worksheets/Sheet1.xml"/></Relationships>',
      'xl/worksheets/sheet1.xml': `<worksheet xmlns="${spreadsheetNamespace}"><sheetData><row><c><v>3</v></c></row></sheetData></worksheet>`,
    });
    expect(valuesOf(readBook(bytes, ''))).toEqual({ A1: 3 });
  });
});

describe('readBook on .xlsx: days counted from 1904', () => {
  it('counts cells with a date format from 1900 and leaves all other numbers', () => {
    const formats = ['yyyy-mm-dd hh:mm', 'hh:mm', '[h]:mm', '0.00', 'd mmm', 'mm:ss', '[Red]0 &quot;days&quot;'];
    const cells = formats.map((_, index) => `<c s="${index + 1}"><v>44000.5</v></c>`).join('');
    const read = rows(
      `<row r="1">${cells}<c><v>44000.5</v></c><c s="1"><v>0.25</v></c><c s="1" t="d"><v>2026-01-01</v></c></row>`,
      {
        formats,
        date1904: true,
      },
    );
    const moved = 45462.5;
    expect(read.sheets[0]!.rows[0]!.map((cell) => cell?.value)).toEqual([
      moved,
      44000.5,
      44000.5,
      44000.5,
      moved,
      44000.5,
      44000.5,
      44000.5,
      0.25,
      46023,
    ]);
    expect(read.date1904).toBe(true);
    expect(read.remarks).toEqual([
      'The file counts its days from 1904; cells with a date format were read as the days they show.',
    ]);
  });
});
