import { cellRange } from '../../../src/sheet/address/cellRange';
import type { CellValue } from '../../../src/sheet/cell/cellValue';
import type { CellWrite } from '../../../src/sheet/patch/cellWrite';
import { patchOds } from '../../../src/sheet/patch/patchOds';
import { readBook } from '../../../src/sheet/read/readBook';
import { FileProblem } from '../../../src/sheet/zip/fileProblem';
import { calcext, odsContentPart, smallOds } from './smallOds';
import { partIn } from './smallWorkbook';

const outside = { has: (name: string) => name.startsWith('QT.') };

type Extras = Partial<Pick<CellWrite, 'formula' | 'fills' | 'isDate'>>;

function write(address: string, value: CellValue, extras: Extras = {}): CellWrite {
  const { firstRow: row, firstColumn: column } = cellRange(address);
  return { sheet: 'Log', row, column, value, ...extras };
}

/** The rows of the sheet after the writes; what stands around them is as it was. */
function rowsAfter(rows: string, ...writes: readonly CellWrite[]): string {
  const after = partIn(patchOds(smallOds(odsContentPart(rows)), writes, outside), 'content.xml');
  const [start = '', end = ''] = odsContentPart('<rows/>').split('<rows/>');
  expect([after.slice(0, start.length), after.slice(-end.length)]).toEqual([start, end]);
  return after.slice(start.length, -end.length);
}

const row = (cells: string): string => `<table:table-row>${cells}</table:table-row>`;
const type = (word: string): string => `office:value-type="${word}" calcext:value-type="${word}"`;
const error = (code: string): CellValue => ({ type: 'Error', basicValue: code });

describe('patchOds: values', () => {
  const formula = 'table:style-name="x" table:formula="of:=X([.A1:.A2])"';
  const before = row(
    `<table:table-cell ${formula} office:value-type="float" office:value="3" calcext:value-type="float"><text:p>3</text:p></table:table-cell>`,
  );

  it.each<[CellValue, string, string]>([
    [0.1 + 0.2, 'office:value="0.30000000000000004"', '<text:p>0.30000000000000004</text:p>'],
    [true, 'office:boolean-value="true"', '<text:p>TRUE</text:p>'],
    ['a & "b"', 'office:string-value="a &amp; &quot;b&quot;"', '<text:p>a &amp; "b"</text:p>'],
    [
      '  two  lines\n\tx ',
      'office:string-value="  two  lines&#10;&#9;x "',
      '<text:p><text:s text:c="2"/>two<text:s text:c="2"/>lines</text:p><text:p><text:tab/>x<text:s/></text:p>',
    ],
  ])('puts %p into a formula cell and keeps formula and style', (value, attribute, text) => {
    const order =
      typeof value === 'number'
        ? `office:value-type="float" ${attribute} calcext:value-type="float"`
        : `${type(typeof value)} ${attribute}`;
    const after = rowsAfter(before, write('A1', value));
    expect(after).toBe(row(`<table:table-cell ${formula} ${order}>${text}</table:table-cell>`));
    expect(
      readBook(patchOds(smallOds(odsContentPart(before)), [write('A1', value)], outside), 'log.ods').sheets[0]
        ?.rows[0]?.[0]?.value,
    ).toBe(value);
  });

  it('stores an error the way programs do, and a blank as a cell with its formula alone', () => {
    expect(rowsAfter(before, write('A1', error('#SPILL!')))).toBe(
      row(
        `<table:table-cell ${formula} office:value-type="string" calcext:value-type="error" office:string-value=""><text:p>#VALUE!</text:p></table:table-cell>`,
      ),
    );
    expect(rowsAfter(before, write('A1', null))).toBe(row(`<table:table-cell ${formula}/>`));
  });

  it('keeps dates, times, shares and money what they were', () => {
    const cells =
      '<table:table-cell office:value-type="date" office:date-value="2026-03-01"><text:p>1 March</text:p></table:table-cell>' +
      '<table:table-cell office:value-type="time" office:time-value="PT08H00M00S"><text:p>8:00</text:p></table:table-cell>' +
      '<table:table-cell office:value-type="percentage" office:value="0.25"><text:p>25 %</text:p></table:table-cell>' +
      '<table:table-cell office:value-type="currency" office:currency="EUR" office:value="5"><text:p>5 €</text:p></table:table-cell>';
    expect(
      rowsAfter(row(cells), write('A1', 46083.354166666664), write('B1', 1.5 / 24), write('C1', 0.07), write('D1', 6)),
    ).toBe(
      row(
        '<table:table-cell office:value-type="date" office:date-value="2026-03-02T08:30:00" calcext:value-type="date"><text:p>2026-03-02 08:30:00</text:p></table:table-cell>' +
          '<table:table-cell office:value-type="time" office:time-value="PT01H30M00S" calcext:value-type="time"><text:p>01:30:00</text:p></table:table-cell>' +
          '<table:table-cell office:value-type="percentage" office:value="0.07" calcext:value-type="percentage"><text:p>7%</text:p></table:table-cell>' +
          '<table:table-cell office:value-type="currency" office:currency="EUR" office:value="6" calcext:value-type="currency"><text:p>6</text:p></table:table-cell>',
      ),
    );
    expect(rowsAfter(row(cells), write('A1', 1e300), write('B1', -1e9))).toContain(
      `${type('float')} office:value="1e+300"><text:p>1e+300</text:p></table:table-cell><table:table-cell ${type('float')} office:value="-1000000000">`,
    );
    const same = [write('A1', 46082), write('B1', 8 / 24), write('C1', 0.25), write('D1', 5)];
    expect(rowsAfter(row(cells), ...same)).toBe(row(cells));
  });

  it('makes a number a day where the format of the cell or its column shows days, or where asked', () => {
    const cells = row('<table:table-cell table:style-name="day"/><table:table-cell/><table:table-cell/>');
    const day = `${type('date')} office:date-value="2026-03-01"><text:p>2026-03-01</text:p></table:table-cell>`;
    expect(rowsAfter(cells, write('A1', 46082), write('B1', 46082, { isDate: true }), write('C1', 46082))).toBe(
      row(`<table:table-cell table:style-name="day" ${day}<table:table-cell ${day}<table:table-cell ${day}`),
    );
  });

  it('keeps notes and drawings of a cell, and its several paragraphs where the text is the same', () => {
    const note = '<office:annotation><text:p>a note</text:p></office:annotation>';
    const cells = `<table:table-cell office:value-type="string">${note}<text:p>one <text:span>two</text:span></text:p><text:p>three<text:s text:c="2"/></text:p></table:table-cell>`;
    expect(rowsAfter(row(cells), write('A1', 'one two\nthree  '))).toBe(row(cells));
    expect(rowsAfter(row(cells), write('A1', 'four'))).toBe(
      row(`<table:table-cell ${type('string')}>${note}<text:p>four</text:p></table:table-cell>`),
    );
  });

  it('declares what the file does not', () => {
    const content = odsContentPart(row('<table:table-cell/>'), '');
    const after = partIn(patchOds(smallOds(content), [write('A1', 1)], outside), 'content.xml');
    expect(after).toBe(
      content.replace(
        '<table:table-cell/>',
        `<table:table-cell office:value-type="float" calcext:value-type="float" ${calcext} office:value="1"><text:p>1</text:p></table:table-cell>`,
      ),
    );
  });

  it('refuses what an .ods file cannot hold, a sheet that is not there and a broken file', () => {
    const bytes = smallOds(odsContentPart(row('<table:table-cell/>')));
    expect(() => patchOds(bytes, [write('A1', 'bell\u0007')], outside)).toThrow(FileProblem);
    expect(() => patchOds(bytes, [{ ...write('A1', 1), sheet: 'Card' }], outside)).toThrow(FileProblem);
    expect(() => patchOds(smallOds('<office:document-content>'), [write('A1', 1)], outside)).toThrow(FileProblem);
  });
});

describe('patchOds: repeated and missing cells', () => {
  const number = (value: number): string =>
    `<table:table-cell ${type('float')} office:value="${value}"><text:p>${value}</text:p></table:table-cell>`;

  it('splits repeated cells and rows where a write falls inside', () => {
    const rows =
      '<table:table-row table:style-name="r" table:number-rows-repeated="5"><table:table-cell table:number-columns-repeated="4" table:style-name="c"/><table:covered-table-cell/></table:table-row>';
    const plain = (count: string): string =>
      `<table:table-row table:style-name="r"${count}><table:table-cell table:number-columns-repeated="4" table:style-name="c"/><table:covered-table-cell/></table:table-row>`;
    const cell = (value: number): string =>
      number(value).replace('<table:table-cell', '<table:table-cell table:style-name="c"');
    expect(rowsAfter(rows, write('B3', 1), write('D3', 2), write('E4', 3), write('A9', null))).toBe(
      plain(' table:number-rows-repeated="2"') +
        `<table:table-row table:style-name="r"><table:table-cell table:style-name="c"/>${cell(1)}<table:table-cell table:style-name="c"/>${cell(2)}<table:covered-table-cell/></table:table-row>` +
        `<table:table-row table:style-name="r"><table:table-cell table:number-columns-repeated="4" table:style-name="c"/>${number(3).replace(/table-cell/g, 'covered-table-cell')}</table:table-row>` +
        plain(''),
    );
  });

  it('does not split where nothing changes', () => {
    const rows = `<table:table-row table:number-rows-repeated="3">${number(7).replace('cell ', 'cell table:number-columns-repeated="3" ')}</table:table-row>`;
    const bytes = smallOds(odsContentPart(rows));
    expect(patchOds(bytes, [write('B2', 7), write('D3', null)], outside)).toBe(bytes);
  });

  it('puts cells behind the last one and rows below', () => {
    const rows = row('<table:table-cell/>') + '<table:table-row-group><table:table-row/></table:table-row-group>';
    expect(rowsAfter(rows, write('D1', 1), write('B2', 2), write('A3', 3), write('B6', 4))).toBe(
      row(`<table:table-cell/><table:table-cell table:number-columns-repeated="2"/>${number(1)}`) +
        `<table:table-row-group><table:table-row><table:table-cell/>${number(2)}</table:table-row></table:table-row-group>` +
        row(number(3)) +
        '<table:table-row table:number-rows-repeated="2"><table:table-cell/></table:table-row>' +
        row(`<table:table-cell/>${number(4)}`),
    );
  });

  it('finds rows in groups and not those of drawings', () => {
    const drawing =
      '<table:shapes><draw:object><table:table-row><table:table-cell/></table:table-row></draw:object></table:shapes>';
    const rows = `${drawing}<table:table-header-rows>${row(number(1))}</table:table-header-rows><table:table-row-group><table:table-row-group>${row(number(2))}</table:table-row-group>${row(number(3))}</table:table-row-group>`;
    const content = odsContentPart(rows, `${calcext} xmlns:draw="urn:oasis:names:tc:opendocument:xmlns:drawing:1.0"`);
    const after = partIn(patchOds(smallOds(content), [write('A2', 20), write('A3', 30)], outside), 'content.xml');
    expect(after).toBe(content.replace(number(2), number(20)).replace(number(3), number(30)));
  });
});

describe('patchOds: formulas', () => {
  it.each([
    ['SUM(A1:B$2,3)', 'of:=SUM([.A1:.B$2];3)'],
    ['\'My log\'!A1+Log!$B:$B&"A1,B1"', "of:=[$'My log'.A1]+[$Log.$B:.$B]&amp;&quot;A1,B1&quot;"],
    ['_xldudf_QT_HOLDDAYS(A2:A9,{1,2;3,4},TRUE)', 'of:=_xldudf_QT_HOLDDAYS([.A2:.A9];{1;2|3;4};TRUE)'],
    ['QT.HOLDDAYS((A1,B1),band)', 'of:=QT.HOLDDAYS(([.A1]~[.B1]);band)'],
  ])('writes %s in the open form', (formula, stored) => {
    const after = rowsAfter(row('<table:table-cell/>'), write('A1', 1, { formula }));
    expect(after.replace(/&apos;/g, "'")).toBe(
      row(
        `<table:table-cell ${type('float')} office:value="1" table:formula="${stored}"><text:p>1</text:p></table:table-cell>`,
      ),
    );
    const read = readBook(
      patchOds(smallOds(odsContentPart(row('<table:table-cell/>'))), [write('A1', 1, { formula })], outside),
      'x.ods',
    );
    expect(read.sheets[0]?.rows[0]?.[0]?.formula).toBe(formula);
  });

  it.each([
    'Table1[Copper]',
    '[1]Log!A1',
    '_xlfn.ANCHORARRAY(A1)',
    '_xlfn.LET(_xlpm.x,1,_xlpm.x)',
    'SUM(A1:B2 B1:C2)',
    'STDEV.S(A1:A9)',
    'A1#',
  ])('refuses %s and says to use the other format', (formula) => {
    expect(() => rowsAfter(row('<table:table-cell/>'), write('A1', 1, { formula }))).toThrow(
      /save the file as \.xlsx first\.$/,
    );
  });

  it('changes what an array formula fills, and takes a formula away', () => {
    const before = row(
      '<table:table-cell table:number-matrix-columns-spanned="2" table:number-matrix-rows-spanned="3" table:formula="of:=X()" office:value-type="float" office:value="1"><text:p>1</text:p></table:table-cell>',
    );
    expect(rowsAfter(before, write('A1', 1, { fills: cellRange('A1:B4') }))).toBe(
      before.replace('rows-spanned="3"', 'rows-spanned="4"'),
    );
    expect(rowsAfter(before, write('A1', 1, { fills: cellRange('A1:B3') }))).toBe(before);
    expect(rowsAfter(before, write('A1', 1, { formula: null }))).toBe(
      row('<table:table-cell office:value-type="float" office:value="1"><text:p>1</text:p></table:table-cell>'),
    );
    const book = readBook(
      patchOds(smallOds(odsContentPart('')), [write('A1', 1, { formula: 'X()', fills: cellRange('A1:B2') })], outside),
      'x.ods',
    );
    expect(book.sheets[0]?.rows[0]?.[0]?.fills).toEqual(cellRange('A1:B2'));
  });
});
