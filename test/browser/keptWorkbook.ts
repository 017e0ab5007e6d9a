import { Workbook, type CellValue, type Worksheet } from 'exceljs';

const start = Date.UTC(2026, 2, 1, 8);
const halfDay = 43_200_000;
const time = 'yyyy-mm-dd hh:mm';

/**
 * A workbook as people keep them: a title above a table with a row of totals, answers beside it, a second table far down
 * its sheet, a card under a name, and a formula of another program.
 */
export async function keptWorkbook(): Promise<Uint8Array> {
  const book = new Workbook();
  putTank(book.addWorksheet('Tank'));
  putRack(book.addWorksheet('Rack'));
  putCards(book.addWorksheet('Cards'));
  book.definedNames.add('Cards!$A$3:$B$6', 'TankCard');
  return new Uint8Array(await book.xlsx.writeBuffer());
}

function putTank(sheet: Worksheet): void {
  sheet.getCell('A1').value = 'Harbour quarantine, spring';
  putTable(sheet, { name: 'TankLog', ref: 'A4', rows: 20, low: [7, 13], totals: true });
  const answers = [
    ['Its band', 1.95, 'low and high limit, mg/L'],
    ['Hold to date', { formula: '_xldudf_QT_HOLDDAYS(A5:A24,B5:B24,"chelated")', result: 3 }, 'to the last test'],
    ['Began', { formula: '_xldudf_QT_HOLDSTART(A5:A24,B5:B24,"chelated")', result: 46085 }, 'the first reading'],
  ];
  answers.forEach((line, at) =>
    line.forEach((value, column) => (sheet.getCell(7 + at, 6 + column).value = value as CellValue)),
  );
  sheet.getCell('K4').value = 'When';
  sheet.getCell('L4').value = 'Copper';
  for (let row = 5; row < 9; row++) {
    sheet.getCell(`K${row}`).value = 46082 + row;
    sheet.getCell(`L${row}`).value = 2.2;
  }
  const rows = { formula: 'OTHER.ROWS(A5:B8)', result: 46087, shareType: 'array', ref: 'K5:L8' };
  sheet.getCell('K5').value = rows;
}

function putRack(sheet: Worksheet): void {
  sheet.getCell('A1').value = 'Rack 2: the readings are far below';
  putTable(sheet, { name: 'RackLog', ref: 'A140', rows: 12, low: [5], totals: false });
}

interface TableTerms {
  readonly name: string;
  readonly ref: string;
  readonly rows: number;
  /** Which of its rows hold a reading below the band. */
  readonly low: readonly number[];
  readonly totals: boolean;
}

function putTable(sheet: Worksheet, { name, ref, rows, low, totals }: TableTerms): void {
  const columns = ['When', 'Copper (mg/L)', 'WC', 'Notes'].map((heading) => ({ name: heading }));
  const cells = Array.from({ length: rows }, (_, i) => {
    const reading = low.includes(i) ? 1.4 : Math.round((2.2 + 0.05 * Math.sin(i)) * 100) / 100;
    return [new Date(start + i * halfDay), reading, i === 2 ? 0.25 : null, i === 9 ? 'one gasping' : null];
  });
  const [first = { name: '' }, ...others] = columns;
  sheet.addTable({
    name,
    ref,
    headerRow: true,
    totalsRow: totals,
    columns: totals ? [{ ...first, totalsRowLabel: 'Total' }, ...others] : columns,
    rows: cells,
  });
  sheet.getColumn(1).numFmt = time;
  sheet.getColumn(2).numFmt = '0.00';
}

function putCards(sheet: Worksheet): void {
  const lines = [
    [],
    ['The tank'],
    ['Volume', '200 L'],
    ['Form', 'chelated'],
    ['Strength', '10 mg/mL'],
    ['Days', 30],
    [],
    [],
    ['The rack'],
    ['System', 'Rack'],
    ['Volume', '640 L'],
    ['Form', 'chelated'],
    ['Days', 14],
  ];
  sheet.addRows(lines.map((line) => [...line]));
}
