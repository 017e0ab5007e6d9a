import { loadExcelize } from '../../../src/app/templates/write/loadExcelize';
import type { CellLook } from '../../../src/sheet/book/cellLook';
import { readBook } from '../../../src/sheet/read/readBook';
import { expectLooks, workbookWithLooks } from './workbookWithLooks';
import { cellAt } from './values';
import { spreadsheetNamespace, xlsxOf } from './xlsxOf';

const looks = { looks: true } as const;
const drawing = 'http://schemas.openxmlformats.org/drawingml/2006/main';
const office = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

const styles = `<styleSheet xmlns="${spreadsheetNamespace}">
  <numFmts><numFmt numFmtId="170" formatCode="0.0"/></numFmts>
  <fonts>
    <font><sz val="11"/><color theme="1"/><name val="Arial"/></font>
    <font><b/><i val="0"/><u val="none"/><sz val="16"/><color rgb="FF1F4E5F"/><name val="Arial"/></font>
    <font><i/><u/><strike/><color indexed="10"/><name val="x;}body{"/></font>
  </fonts>
  <fills>
    <fill><patternFill patternType="none"><fgColor rgb="FF00FF00"/></patternFill></fill>
    <fill><patternFill patternType="gray125"/></fill>
    <fill><patternFill patternType="solid"><fgColor theme="4" tint="-0.5"/><bgColor indexed="64"/></patternFill></fill>
    <fill><gradientFill><stop position="0"><color rgb="FFE6F0FA"/></stop><stop position="1"><color rgb="FF000000"/></stop></gradientFill></fill>
  </fills>
  <borders>
    <border><left/><right/><top/><bottom/></border>
    <border><left style="thin"><color rgb="FFCFD8DC"/></left><right/><top/><bottom style="double"><color auto="1"/></bottom></border>
  </borders>
  <cellStyleXfs><xf fontId="2"/></cellStyleXfs>
  <cellXfs>
    <xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>
    <xf numFmtId="0" fontId="1" fillId="2" borderId="1"><alignment horizontal="center" vertical="center" wrapText="1" indent="2"/></xf>
    <xf numFmtId="170" fontId="0" fillId="0" borderId="0"/>
    <xf numFmtId="0" fontId="2" fillId="3" borderId="0"/>
    <xf numFmtId="170" fontId="1" fillId="2" borderId="1"><alignment horizontal="center" vertical="center" wrapText="true" indent="2"/></xf>
    <xf numFmtId="0" fontId="0" fillId="1" borderId="0"/>
  </cellXfs>
  <dxfs><dxf><font><b/></font><fill><patternFill><bgColor rgb="FF00FF00"/></patternFill></fill></dxf></dxfs>
</styleSheet>`;

const theme = `<a:theme xmlns:a="${drawing}"><a:themeElements><a:clrScheme name="own">
  <a:dk1><a:sysClr val="windowText" lastClr="101010"/></a:dk1><a:lt1><a:sysClr val="window" lastClr="FFFFFF"/></a:lt1>
  <a:dk2><a:srgbClr val="1F497D"/></a:dk2><a:lt2><a:srgbClr val="EEECE1"/></a:lt2>
  <a:accent1><a:srgbClr val="4F81BD"/></a:accent1>
</a:clrScheme></a:themeElements></a:theme>`;

const relations =
  `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">` +
  ['worksheet,worksheets/sheet1', 'styles,styles', 'theme,theme/theme1', 'sharedStrings,sharedStrings']
    .map((pair, index) => {
      const [type, target] = pair.split(',');
      return `<Relationship Id="rId${index + 1}" Type="${office}/${type}" Target="${target}.xml"/>`;
    })
    .join('') +
  '</Relationships>';

const byHand = xlsxOf({
  before:
    '<sheetPr><tabColor rgb="FFB4521E"/></sheetPr><sheetViews><sheetView showGridLines="0"><pane xSplit="1" ySplit="2" topLeftCell="B3" state="frozen"/></sheetView></sheetViews>' +
    '<sheetFormatPr defaultRowHeight="18"/><cols><col min="1" max="1" width="10"/><col min="3" max="4" width="9" style="2"/><col min="6" max="6" hidden="1"/></cols>',
  sheets: {
    Log:
      '<row r="1" ht="30" customHeight="1"><c r="A1" s="1"><v>1</v></c><c r="B1" s="4"><v>1</v></c><c r="C1" s="2"/><c r="D1" s="0"/></row>' +
      '<row r="2" ht="33"><c r="A2" s="3"><v>1</v></c><c r="B2" s="1"/></row>' +
      '<row r="3" hidden="1" s="1" customFormat="1"><c r="A3"><v>1</v></c><c r="B3" s="99"><v>1</v></c><c r="C3" s="5"/></row>',
  },
  parts: { 'xl/styles.xml': styles, 'xl/theme/theme1.xml': theme, 'xl/_rels/workbook.xml.rels': relations },
});

const heading: CellLook = {
  bold: true,
  size: 16,
  font: 'Arial',
  colour: '#1f4e5f',
  fill: '#254061',
  borders: { left: { line: 'thin', colour: '#cfd8dc' }, bottom: { line: 'double' } },
  across: 'center',
  upright: 'center',
  wrap: true,
  indent: 2,
};

describe('readBook with looks', () => {
  const book = readBook(byHand, 'log.xlsx', looks);
  const layout = book.sheets[0]?.layout;

  it('reads fonts, fills, borders and alignment, with colours of the theme and their tints', () => {
    expect(book.plain).toEqual({ size: 11, font: 'Arial', colour: '#101010' });
    expect(cellAt(book, 'A1')?.look).toEqual(heading);
    expect(cellAt(book, 'A2')?.look).toEqual({
      italic: true,
      underline: true,
      struck: true,
      colour: '#ff0000',
      fill: '#e6f0fa',
    });
  });

  it('gives cells that look alike one object, and plain ones none', () => {
    expect(cellAt(book, 'B1')?.look).toBe(cellAt(book, 'A1')?.look);
    expect(cellAt(book, 'B1')?.format).toBe('0.0');
    for (const plain of ['A3', 'B3', 'C1']) expect(cellAt(book, plain)?.look).toBeUndefined();
  });

  it('keeps blank cells that have a look or a format, and no others', () => {
    expect(cellAt(book, 'C1')).toEqual({ value: null, format: '0.0' });
    expect(cellAt(book, 'B2')).toEqual({ value: null, look: heading });
    expect([cellAt(book, 'D1'), cellAt(book, 'C3')]).toEqual([undefined, undefined]);
  });

  it('reads heights, what stays in view, lines of the grid, the tab, and what is hidden', () => {
    expect(layout).toMatchObject({ heights: [40, 44], defaultHeight: 24, gridlines: false, tab: '#b4521e' });
    expect(layout?.frozen).toEqual({ rows: 2, columns: 1 });
    expect([...(layout?.fixedRows ?? [])]).toEqual([0]);
    expect([[...(layout?.hiddenRows ?? [])], [...(layout?.hiddenColumns ?? [])]]).toEqual([[2], [5]]);
  });

  it('reads the styles of whole rows and columns', () => {
    expect([...(layout?.rowStyles ?? [])]).toEqual([[2, { look: heading }]]);
    const decimal = { look: book.plain, format: '0.0' };
    expect([...(layout?.columnStyles ?? [])]).toEqual([2, 3].map((column) => [column, decimal]));
  });

  it('counts column widths in digits of the own font of the file', () => {
    // Ten digits of Arial at 11 points, 8 pixels each, and the rounding of the format.
    expect(book.sheets[0]?.widths[0]).toBe(80);
  });

  it('reads nothing of it where it was not asked for', () => {
    const bare = readBook(byHand, 'log.xlsx');
    expect(JSON.stringify(bare)).not.toMatch(/"(?:look|layout|plain)"/);
    expect(cellAt(bare, 'B2')).toBeUndefined();
    expect(cellAt(bare, 'C1')).toEqual({ value: null, format: '0.0' });
  });

  it('takes a style sheet that is full of nonsense as one that says little', () => {
    const odd = styles
      .replace('<sz val="16"/>', '<sz val="1e9"/>')
      .replace('rgb="FF1F4E5F"', 'rgb="url(x)"')
      .replace('theme="4" tint="-0.5"', 'theme="400" tint="9"')
      .replace('horizontal="center" vertical="center"', 'horizontal="__proto__" vertical="constructor"')
      .replace('indent="2"', 'indent="-4"')
      .replace('<left style="thin">', '<left style="constructor">')
      .replace('<bottom style="double">', '<constructor style="thin"/><bottom>');
    const parts = { 'xl/styles.xml': odd, 'xl/_rels/workbook.xml.rels': relations };
    const read = readBook(xlsxOf({ sheets: { S: '<row><c s="1"><v>1</v></c></row>' }, parts }), 'x.xlsx', looks);
    expect(cellAt(read, 'A1')?.look).toEqual({ bold: true, font: 'Arial', wrap: true });
  });
});

describe('readBook with looks of other hands', () => {
  it('reads those of exceljs', async () => {
    const book = readBook(await workbookWithLooks(), 'log.xlsx', looks);
    expectLooks(book);
    expect(book.sheets[0]?.layout).toMatchObject({
      frozen: { rows: 1, columns: 0 },
      gridlines: false,
      tab: '#1f4e5f',
    });
  });

  it('reads those of excelize', async () => {
    const excelize = await loadExcelize();
    const file = excelize.NewFile();
    const { style } = file.NewStyle({
      Font: { Bold: true, Size: 12, Color: '7A2E0E', Family: 'Arial' },
      Fill: { Type: 'pattern', Pattern: 1, Color: ['FDF3EC'] },
      Alignment: { WrapText: true, Indent: 1, Horizontal: 'left' },
      Border: [{ Type: 'top', Style: 1, Color: 'CFD8DC' }],
    });
    file.SetCellStyle('Sheet1', 'B2', 'B3', style);
    file.SetCellValue('Sheet1', 'B2', 'words');
    file.SetRowHeight('Sheet1', 2, 30);
    const { buffer } = file.WriteToBuffer();
    const book = readBook(new Uint8Array(buffer as unknown as ArrayBuffer), 'x.xlsx', looks);
    const look: CellLook = {
      bold: true,
      size: 12,
      font: 'Arial',
      colour: '#7a2e0e',
      fill: '#fdf3ec',
      across: 'left',
      wrap: true,
      indent: 1,
      borders: { top: { line: 'thin', colour: '#cfd8dc' } },
    };
    expect(cellAt(book, 'B2')).toEqual({ value: 'words', look });
    expect(cellAt(book, 'B3')).toEqual({ value: null, look });
    expect(book.sheets[0]?.layout?.heights[1]).toBe(40);
  });
});
