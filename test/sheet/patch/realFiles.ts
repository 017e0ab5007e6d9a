import ExcelJS from 'exceljs';
import type * as Excelize from 'excelize-wasm';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { loadExcelize } from '../../../src/app/templates/write/loadExcelize';

const ours = '_xldudf_QT_HOLDDAYS(A2:A9,B2:B9,"chelated")';
const days = [46082, 46083, 46084, 46085];

/** The workbook of one writer with its conditional formats, validation, merged cells, a note, a name, a table, a picture. */
export async function byExceljs(): Promise<Uint8Array> {
  const book = new ExcelJS.Workbook();
  const log = book.addWorksheet('Log', { views: [{ state: 'frozen', ySplit: 1 }] });
  log.addRow(['When', 'Copper', 'Note', 'Answer']);
  days.forEach((day, index) => log.addRow([new Date(Date.UTC(1899, 11, 30 + day)), 2 + index / 10, `row ${index}`]));
  log.getColumn(1).numFmt = 'yyyy-mm-dd';
  log.getCell('D2').value = { formula: ours, result: 3 };
  log.getCell('D3').value = { formula: ours, result: 'three' };
  log.getCell('D4').value = { formula: ours, result: 4 };
  log.getCell('D5').value = { formula: ours, result: 5 };
  log.fillFormula('E2:E5', 'B2*2', [4, 4.2, 4.4, 4.6]);
  log.getCell('F2').value = {
    formula: '_xldudf_QT_HOLDROWS(A2:A9,B2:B9)',
    ref: 'F2:G4',
    shareType: 'array',
    result: 'From',
  } as never;
  [
    ['G2', 'To'],
    ['F3', 1],
    ['G3', 2],
    ['F4', 3],
    ['G4', 4],
  ].forEach(([address, value]) => (log.getCell(String(address)).value = value ?? null));
  log.getCell('C3').note = 'a note';
  log.mergeCells('H2:I3');
  log.getCell('B2').dataValidation = { type: 'decimal', operator: 'between', formulae: [0, 5] };
  log.addConditionalFormatting({
    ref: 'B2:B9',
    rules: [
      { type: 'cellIs', operator: 'greaterThan', formulae: ['2.5'], priority: 1, style: { font: { bold: true } } },
    ],
  });
  const card = book.addWorksheet('Card & rest');
  card.addTable({
    name: 'Card',
    ref: 'A1',
    headerRow: true,
    columns: [{ name: 'Entry' }, { name: 'Value' }],
    rows: [['volume', 200]],
  });
  const picture = book.addImage({ buffer: Buffer.from(onePixel, 'base64') as never, extension: 'png' });
  card.addImage(picture, 'D2:E4');
  book.definedNames.add('Log!$B$2:$B$9', 'copper');
  return new Uint8Array(await book.xlsx.writeBuffer());
}

const onePixel = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';

/** The same with a native chart, by another writer. */
export async function byExcelize(): Promise<Uint8Array> {
  const excelize = await wholeExcelize();
  const book = excelize.NewFile();
  const done = ({ error }: { error: string | null }): void => {
    if (error !== null) throw new Error(error);
  };
  done(book.SetSheetName('Sheet1', 'Log'));
  ['When', 'Copper', 'Note', 'Answer'].forEach((heading, column) =>
    done(book.SetCellValue('Log', `${'ABCD'[column]}1`, heading)),
  );
  days.forEach((day, index) => {
    done(book.SetCellValue('Log', `A${index + 2}`, day));
    done(book.SetCellValue('Log', `B${index + 2}`, 2 + index / 10));
    done(book.SetCellValue('Log', `C${index + 2}`, `row ${index}`));
  });
  [3, 'three', 4, 5].forEach((result, index) => {
    done(book.SetCellValue('Log', `D${index + 2}`, result));
    done(book.SetCellFormula('Log', `D${index + 2}`, ours));
  });
  done(book.SetCellFormula('Log', 'F2', '_xldudf_QT_HOLDROWS(A2:A9,B2:B9)', { Type: 'array', Ref: 'F2:G4' }));
  done(
    book.AddDataValidation('Log', {
      Sqref: 'B2:B9',
      Type: 'decimal',
      Operator: 'between',
      Formula1: '0',
      Formula2: '5',
    }),
  );
  done(
    book.SetConditionalFormat('Log', 'B2:B9', [
      {
        Type: '2_color_scale',
        Criteria: '=',
        MinType: 'min',
        MaxType: 'max',
        MinColor: '#F8696B',
        MaxColor: '#63BE7B',
      },
    ]),
  );
  done(book.SetDefinedName({ Name: 'copper', RefersTo: 'Log!$B$2:$B$9' }));
  const series = [{ Name: 'Log!$B$1', Categories: 'Log!$A$2:$A$5', Values: 'Log!$B$2:$B$5' }];
  done(book.AddChart('Log', 'K2', { Type: excelize.Scatter, Series: series }));
  done(book.NewSheet('Card & rest'));
  done(book.SetCellValue('Card & rest', 'A1', 'Entry'));
  done(book.SetCellValue('Card & rest', 'B1', 'Value'));
  done(book.SetCellValue('Card & rest', 'A2', 'volume'));
  done(book.SetCellValue('Card & rest', 'B2', 200));
  done(book.AddTable('Card & rest', { Range: 'A1:B2', Name: 'Card' }));
  const { buffer, error } = book.WriteToBuffer();
  done({ error });
  return new Uint8Array(buffer as unknown as Uint8Array);
}

export async function wholeExcelize(): Promise<
  typeof Excelize & { readonly Scatter: number; OpenReader(file: Uint8Array): Excelize.NewFile }
> {
  return (await loadExcelize()) as never;
}

/** An .xlsm: the same workbook with an invented part of macros, as its type and relation announce. */
export function withMacros(xlsx: Uint8Array): Uint8Array {
  const parts = unzipSync(xlsx);
  const text = (name: string): string => new TextDecoder().decode(parts[name]);
  const types = text('[Content_Types].xml')
    .replace(
      'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml',
      'application/vnd.ms-excel.sheet.macroEnabled.main+xml',
    )
    .replace(
      '</Types>',
      '<Override PartName="/xl/vbaProject.bin" ContentType="application/vnd.ms-office.vbaProject"/></Types>',
    );
  const relations = text('xl/_rels/workbook.xml.rels').replace(
    '</Relationships>',
    '<Relationship Id="rIdMacros" Type="http://schemas.microsoft.com/office/2006/relationships/vbaProject" Target="vbaProject.bin"/></Relationships>',
  );
  const macros = Uint8Array.from({ length: 5000 }, (_, index) => (index * index * 31 + index) % 251);
  return zipSync({
    ...parts,
    '[Content_Types].xml': strToU8(types),
    'xl/_rels/workbook.xml.rels': strToU8(relations),
    'xl/vbaProject.bin': macros,
  });
}
