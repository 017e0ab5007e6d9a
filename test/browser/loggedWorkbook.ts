import { Workbook, type Worksheet } from 'exceljs';

export interface LoggedWorkbook {
  readonly readings: number;
  /** Counts its days from 1904. */
  readonly date1904?: boolean;
}

const start = Date.UTC(2026, 2, 1, 8);
const halfDay = 43_200_000;
const time = 'yyyy-mm-dd hh:mm';

/** An invented keeper's workbook: a log as a table, a card, and answers of the cell functions as files hold them. */
export async function loggedWorkbook({ readings, date1904 = false }: LoggedWorkbook): Promise<Uint8Array> {
  const book = new Workbook();
  book.properties.date1904 = date1904;
  putLog(book.addWorksheet('Tank log'), readings);
  putCard(book.addWorksheet('Card'));
  const answers = book.addWorksheet('Answers');
  answers.getCell('A1').value = 'Days held';
  putOurs(answers, 'B1', 'HOLDDAYS(Readings[When],Readings[Copper (mg/L)],"chelated")', 0);
  answers.getCell('B1').numFmt = '0.00';
  answers.getCell('A2').value = 'Ends';
  putOurs(answers, 'B2', 'HOLDENDS(Readings[When],Readings[Copper (mg/L)],"chelated")', 0);
  answers.getCell('B2').numFmt = time;
  answers.getCell('A3').value = 'Mean reading';
  answers.getCell('B3').value = { formula: 'AVERAGE(Readings[Copper (mg/L)])', result: 2.2 };
  answers.getCell('A4').value = 'Of another add-in';
  answers.getCell('B4').value = { formula: 'OTHER.NUMBER(1)', result: 42 };
  return new Uint8Array(await book.xlsx.writeBuffer());
}

function putLog(sheet: Worksheet, readings: number): void {
  const rows = Array.from({ length: readings }, (_, i) => [
    new Date(start + i * halfDay),
    Math.round((2.2 + 0.08 * Math.sin(i * 0.7)) * 100) / 100,
    null,
    i === 0 ? 'Copper was brought up over the days before' : null,
  ]);
  sheet.addTable({
    name: 'Readings',
    ref: 'A1',
    headerRow: true,
    columns: ['When', 'Copper (mg/L)', 'Dose mL', 'Notes'].map((name) => ({ name })),
    rows,
  });
  sheet.getColumn(1).width = 18;
  sheet.getColumn(1).numFmt = time;
  sheet.getColumn(2).width = 16;
  sheet.getColumn(2).numFmt = '0.00';
  sheet.getCell('A1').fill = { type: 'pattern', pattern: 'solid', fgColor: { argb: 'FF1F4E5F' } };
}

function putCard(sheet: Worksheet): void {
  const card: readonly (readonly [string, string | number])[] = [
    ['Volume', '200 L'],
    ['Form', 'chelated'],
    ['Strength', '10 mg/mL'],
    ['Days', 30],
  ];
  sheet.addRows(card.map((line) => [...line]));
}

/** A formula of ours in its stored form; the writer knows no array that may grow, so it stands as a plain formula. */
function putOurs(sheet: Worksheet, cell: string, call: string, result: number): void {
  sheet.getCell(cell).value = { formula: `_xldudf_QT_${call}`, result };
}
