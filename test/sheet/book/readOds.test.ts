import { readBook } from '../../../src/sheet/read/readBook';
import { refusal } from '../zip/refusal';
import { odsOf, type OdsPlan } from './odsOf';
import { cellAt, valuesOf } from './values';

const book = (plan: OdsPlan) => readBook(odsOf(plan), 'log.ods');
const table = (rows: string, attributes = '') => `<table:table table:name="Log" ${attributes}>${rows}</table:table>`;
const row = (cells: string, attributes = '') => `<table:table-row ${attributes}>${cells}</table:table-row>`;
const float = (value: number, attributes = '') =>
  `<table:table-cell office:value-type="float" office:value="${value}" ${attributes}><text:p>${value}</text:p></table:table-cell>`;
const cells = (inner: string, more: Partial<OdsPlan> = {}) => book({ body: table(row(inner)), ...more });

describe('readBook on .ods', () => {
  it('reads every kind of value', () => {
    const read = cells(
      float(2.15) +
        '<table:table-cell office:value-type="percentage" office:value="0.25"><text:p>25%</text:p></table:table-cell>' +
        '<table:table-cell office:value-type="currency" office:value="12.5"/>' +
        '<table:table-cell office:value-type="boolean" office:boolean-value="true"/>' +
        '<table:table-cell office:value-type="date" office:date-value="2026-03-29T02:30:00"/>' +
        '<table:table-cell office:value-type="date" office:date-value="2026-03-29"/>' +
        '<table:table-cell office:value-type="time" office:time-value="PT08H30M00S"/>' +
        '<table:table-cell office:value-type="string"><text:p>day <text:span>three</text:span></text:p><text:p>a<text:s text:c="3"/>b<text:tab/>c<text:line-break/>d</text:p></table:table-cell>' +
        '<table:table-cell office:value-type="string" office:string-value="kept"><text:p>shown</text:p></table:table-cell>' +
        '<table:table-cell office:value-type="string" office:string-value="" calcext:value-type="error"><text:p>#N/A</text:p></table:table-cell>' +
        '<table:table-cell office:value-type="string" office:string-value="" calcext:value-type="error"><text:p>Err:508</text:p></table:table-cell>' +
        '<table:table-cell office:value-type="float" office:value="1"><text:p>WAHR</text:p></table:table-cell>' +
        '<table:table-cell/>',
    );
    expect(valuesOf(read)).toEqual({
      A1: 2.15,
      B1: 0.25,
      C1: 12.5,
      D1: true,
      E1: 46110 + 2.5 / 24,
      F1: 46110,
      G1: 8.5 / 24,
      H1: 'day three\na   b\tc\nd',
      I1: 'kept',
      J1: { type: 'Error', basicValue: '#N/A' },
      K1: { type: 'Error', basicValue: '#VALUE!' },
      L1: true,
    });
    expect(['E1', 'F1', 'G1'].map((at) => cellAt(read, at)?.format)).toEqual([
      'yyyy-mm-dd hh:mm',
      'yyyy-mm-dd',
      '[hh]:mm:ss',
    ]);
  });

  it('reads formulas in the form of a workbook, with what they fill', () => {
    const formula = (text: string, more = '') => float(1, `table:formula="${text}" ${more}`);
    const read = cells(
      formula('of:=_xldudf_qt_holddays([.A2:.A9];[$Log.$B$2:.B9];&quot;chelated&quot;)') +
        formula(
          'of:=qt.holdrows([.A2:.A9])',
          'table:number-matrix-columns-spanned="2" table:number-matrix-rows-spanned="3"',
        ),
    );
    expect(cellAt(read, 'A1')).toEqual({ value: 1, formula: '_xldudf_QT_HOLDDAYS(A2:A9,Log!$B$2:B9,"chelated")' });
    expect(cellAt(read, 'B1')).toEqual({
      value: 1,
      formula: 'QT.HOLDROWS(A2:A9)',
      fills: { firstRow: 0, firstColumn: 1, lastRow: 2, lastColumn: 2 },
    });
  });

  it('follows number formats through styles, their parents, rows and columns', () => {
    const data = (name: string, kind: string, inner: string, more = '') =>
      `<number:${kind}-style style:name="${name}" ${more}>${inner}</number:${kind}-style>`;
    const style = (name: string, more: string) =>
      `<style:style style:name="${name}" style:family="table-cell" ${more}/>`;
    const text = (letters: string) => `<number:text>${letters}</number:text>`;
    const styles =
      data(
        'N1',
        'date',
        `<number:year number:style="long"/>${text('-')}<number:month number:style="long"/>${text('-')}<number:day number:style="long"/>${text(' ')}<number:hours/>${text(':')}<number:minutes number:style="long"/>`,
      ) +
      data(
        'N2',
        'number',
        `<number:number number:decimal-places="3" number:min-decimal-places="1" number:min-integer-digits="1" number:grouping="true"/>${text(' mg/L')}`,
      ) +
      data(
        'N3',
        'time',
        `<number:hours number:style="long"/>${text(':')}<number:minutes number:style="long"/>`,
        'number:truncate-on-overflow="false"',
      ) +
      data('N4', 'number', '<number:number number:min-integer-digits="1"/>') +
      data('N5', 'percentage', `<number:number number:decimal-places="1" number:min-integer-digits="1"/>${text('%')}`) +
      data('N6P0', 'number', '<number:number number:decimal-places="2" number:min-integer-digits="1"/>') +
      data(
        'N6',
        'number',
        `${text('-')}<number:number number:decimal-places="2" number:min-integer-digits="1"/><style:map style:condition="value()&gt;=0" style:apply-style-name="N6P0"/>`,
      ) +
      style('a', 'style:data-style-name="N1"') +
      style('b', 'style:parent-style-name="common"') +
      [3, 4, 5, 6].map((n) => style(`s${n}`, `style:data-style-name="N${n}"`)).join('') +
      style('loop', 'style:parent-style-name="loop"');
    const common = `${data('N2c', 'text', '<number:text-content/>')}${style('common', 'style:data-style-name="N2"')}`;
    const columns =
      '<table:table-column table:default-cell-style-name="a"/><table:table-column table:number-columns-repeated="9"/>';
    const read = book({
      styles,
      common,
      body: table(
        columns +
          row(
            float(1) +
              ['b', 's3', 's4', 's5', 's6', 'loop'].map((name) => float(1, `table:style-name="${name}"`)).join(''),
          ) +
          row(float(1), 'table:default-cell-style-name="s3"'),
      ),
    });
    expect(read.sheets[0]!.rows[0]!.map((cell) => cell?.format)).toEqual([
      'yyyy-mm-dd h:mm',
      '#,##0.0##" mg/L"',
      '[hh]:mm',
      undefined,
      '0.0%',
      '0.00;-0.00',
      undefined,
    ]);
    expect(cellAt(read, 'A2')?.format).toBe('[hh]:mm');
  });

  it('lets a million empty rows and columns be, and repeats those with something in them', () => {
    const start = performance.now();
    const read = book({
      body: table(
        '<table:table-column table:number-columns-repeated="16384" table:default-cell-style-name="d"/>' +
          row(
            `${float(1, 'table:number-columns-repeated="2"')}<table:table-cell table:number-columns-repeated="16382"/>`,
            'table:number-rows-repeated="3"',
          ) +
          row(
            '<table:table-cell table:style-name="d" table:number-columns-repeated="16384"/>',
            'table:number-rows-repeated="1048572"',
          ) +
          row(`<table:table-cell table:number-columns-repeated="16383"/>${float(7)}`),
      ),
      styles:
        '<number:text-style style:name="T"><number:text-content/></number:text-style><style:style style:name="d" style:family="table-cell" style:data-style-name="T"/>',
    });
    expect(performance.now() - start).toBeLessThan(5000);
    expect(Object.keys(read.sheets[0]!.rows)).toEqual(['0', '1', '2', '1048575']);
    expect(cellAt(read, 'XFD1048576')?.value).toBe(7);
    expect(read.sheets[0]!.rows[2]!.map((cell) => cell?.value)).toEqual([1, 1]);
  });

  it('gives merged ranges, widths, hidden sheets, and what covered cells hold', () => {
    const styles =
      '<style:style style:name="w" style:family="table-column"><style:table-column-properties style:column-width="2.54cm"/></style:style>' +
      '<style:style style:name="h" style:family="table"><style:table-properties table:display="false"/></style:style>';
    const read = book({
      styles,
      body: table(
        '<table:table-column table:style-name="w" table:number-columns-repeated="16384"/>' +
          row(
            float(1, 'table:number-columns-spanned="2" table:number-rows-spanned="2"') +
              '<table:covered-table-cell/><table:covered-table-cell office:value-type="float" office:value="3"/>',
          ),
        'table:style-name="h"',
      ),
    });
    expect(read.sheets[0]).toMatchObject({
      hidden: true,
      merged: [{ firstRow: 0, firstColumn: 0, lastRow: 1, lastColumn: 1 }],
      widths: [96, 96, 96],
    });
    expect(valuesOf(read)).toEqual({ A1: 1, C1: 3 });
  });

  it('leaves out notes, drawings, old versions and forms', () => {
    const ghost = table(row(float(9)));
    const read = book({
      body:
        `<table:tracked-changes><table:deletion>${row(float(8))}</table:deletion></table:tracked-changes>` +
        table(
          `<office:forms>${row(float(9))}</office:forms><table:shapes><draw:frame>${ghost}</draw:frame></table:shapes>` +
            row(
              '<table:table-cell office:value-type="string"><office:annotation><text:p>a note</text:p></office:annotation><text:p>seen</text:p><draw:frame><text:p>box</text:p></draw:frame></table:table-cell>',
            ),
        ),
    });
    expect(read.sheets.map((sheet) => sheet.name)).toEqual(['Log']);
    expect(valuesOf(read)).toEqual({ A1: 'seen' });
  });

  it('gives names and named ranges of cells', () => {
    const read = book({
      body:
        table(
          row('<table:table-cell office:value-type="string"><text:p>Time</text:p></table:table-cell>') +
            '<table:named-expressions><table:named-range table:name="here" table:cell-range-address="$Log.$A$1:.$B$3"/></table:named-expressions>',
        ) +
        '<table:named-expressions><table:named-expression table:name="rate" table:expression="of:=[$Log.$A$1]*2"/></table:named-expressions>' +
        '<table:database-ranges><table:database-range table:name="Readings" table:target-range-address="Log.A1:Log.B9"/>' +
        '<table:database-range table:name="__Anonymous_Sheet_DB__0" table:target-range-address="Log.A1:Log.B9"/>' +
        '<table:database-range table:name="Bare" table:target-range-address="Log.A1:Log.A9" table:contains-header="false"/></table:database-ranges>',
    });
    expect(read.names).toEqual([
      { name: 'here', formula: 'Log!$A$1:$B$3', sheet: 'Log' },
      { name: 'rate', formula: 'Log!$A$1*2' },
    ]);
    expect(read.tables).toMatchObject([
      { name: 'Readings', sheet: 'Log', columns: ['Time', 'Column2'], headings: true },
      { name: 'Bare', columns: ['Column1'], headings: false },
    ]);
  });

  it('knows a file that counts from 1904, whose dates are written out and whose numbers are not', () => {
    const styles =
      '<number:date-style style:name="D"><number:year/></number:date-style><style:style style:name="d" style:data-style-name="D"/>';
    const read = book({
      styles,
      body:
        '<table:calculation-settings><table:null-date table:date-value="1904-01-01"/></table:calculation-settings>' +
        table(
          row(
            '<table:table-cell office:value-type="date" office:date-value="2026-03-29"/>' +
              float(44648, 'table:style-name="d"') +
              float(44648),
          ),
        ),
    });
    expect(valuesOf(read)).toEqual({ A1: 46110, B1: 46110, C1: 44648 });
    expect(read.date1904).toBe(true);
    expect(read.remarks).toHaveLength(1);
  });

  it('refuses a file with a password, one without sheets, and repetitions without end', () => {
    const manifest = '<manifest><file-entry><encryption-data/></file-entry></manifest>';
    expect(refusal(() => book({ body: table(''), parts: { 'META-INF/manifest.xml': manifest } }))).toContain(
      'password',
    );
    expect(refusal(() => book({ body: '' }))).toContain('no sheet');
    const endless = row(float(1, 'table:number-columns-repeated="16384"'), 'table:number-rows-repeated="1048576"');
    expect(refusal(() => book({ body: table(endless) }))).toContain('million filled cells');
    const wide = row(float(1, 'table:number-columns-repeated="2000000000"'));
    expect(refusal(() => book({ body: table(wide) }))).toContain('beyond XFD1048576');
    const spaces =
      '<table:table-cell office:value-type="string"><text:p><text:s text:c="2000000000"/></text:p></table:table-cell>';
    expect(String(cellAt(cells(spaces), 'A1')?.value)).toHaveLength(32_767);
  });
});
