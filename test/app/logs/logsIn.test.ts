import { addressRange } from '../../../src/sheet/address/addressOf.js';
import { hiddenLogs, logsIn } from '../../../src/app/logs/logsIn.js';
import type { Book } from '../../../src/sheet/book/book.js';
import { csvBook } from '../../sheet/csv/csvBook.js';
import { beside, bookOf, filling, type Written } from './bookOf.js';
import { cardRows, cardTable, firstDay, logRows, sharedRows } from './sampleRows.js';

const places = (book: Book, sheet?: string): string[] =>
  logsIn(book, sheet).map((log) => `${log.sheet}!${addressRange(log.range)}`);
const blank = (rows: number): Written[][] => Array.from({ length: rows }, () => []);

describe('logsIn', () => {
  it('finds a log from its first row, and below titles, not in column A', () => {
    expect(places(bookOf({ Log: logRows(3) }))).toEqual(['Log!A1:C7']);
    const lower = [
      ['Quarantine at the harbour'],
      ['Date of print', 46000],
      ...blank(25),
      ...logRows(3).map((row) => [null, null, ...row]),
    ];
    expect(places(bookOf({ Log: lower }))).toEqual(['Log!C28:E34']);
  });

  it('takes the words people use', () => {
    const heads = (...headings: string[]): Book => bookOf({ S: [headings, [firstDay, 2, 3, 4, 5]] });
    expect(places(heads('day', 'Date tested', 'Cu', 'meds'))).toEqual(['S!A1:D2']);
    expect(places(heads('When', 'test_ppm'))).toEqual(['S!A1:B2']);
    expect(places(heads('Date', 'Nitrate ppm', 'pH'))).toEqual([]);
    expect(places(heads('Date', 'Temp', 'pH'))).toEqual([]);
    expect(places(heads('Item', 'Copper pipe'))).toEqual([]);
    expect(places(bookOf({ S: [['Date and time of the copper test']] }))).toEqual([]);
  });

  it('keeps columns without a heading where something stands in them, and rows after blank ones', () => {
    const rows = [
      ['Date', null, 'Copper', null, 'Elsewhere'],
      [firstDay, 'x', 2],
      [],
      [firstDay + 1, null, 2, null, 'y'],
    ];
    expect(places(bookOf({ S: rows }))).toEqual(['S!A1:C4']);
  });

  it('takes a time and a copper column for one log though an empty column lies between', () => {
    expect(
      places(
        bookOf({
          S: [
            ['Date', null, 'Copper'],
            [firstDay, null, 2],
          ],
        }),
      ),
    ).toEqual(['S!A1:C2']);
    expect(places(bookOf({ S: [['Date', null, 'Copper']] }))).toEqual([]);
  });

  it('ends a log where another block begins', () => {
    const log = logRows(2);
    const ends = (...below: Written[][]): string[] => places(bookOf({ S: [...log, ...below] }));
    expect(ends([], ['Date', 'Fish', 'Tolerates copper?'], [firstDay, 'Blenny'])[0]).toBe('S!A1:C5');
    expect(ends([], ['Item', 'Price'], ['Salt', 45])).toEqual(['S!A1:C5']);
    expect(ends([], ['Keep thirty days.'])).toEqual(['S!A1:C5']);
    expect(ends([], ...cardRows.map((row) => [...row]))).toEqual(['S!A1:C5']);
    expect(ends(['Total', 8.8])).toEqual(['S!A1:C6']);
  });

  it('leaves no row out in silence: notes, garbled times, the headings once more', () => {
    const log = logRows(2);
    const ends = (...below: Written[][]): string[] => places(bookOf({ S: [...log, ...below] }));
    expect(ends([], ['yesterday', 2.1])).toEqual(['S!A1:C7']);
    expect(ends([], [null, 1.9])).toEqual(['S!A1:C7']);
    expect(ends([], ['moved house', 'see below'], [], [firstDay + 9, 2])).toEqual(['S!A1:C9']);
    expect(ends(['Date', 'Copper mg/L', 'Note'], [firstDay + 9, 2])).toEqual(['S!A1:C7']);
    expect(ends([null, null, 'changed carbon'])).toEqual(['S!A1:C6']);
  });

  it('finds a second log below and one beside', () => {
    expect(places(bookOf({ S: [...logRows(2), [], ['When', 'Cu', 'Dose'], [firstDay, 2, 3]] }))).toEqual([
      'S!A1:C5',
      'S!A7:C8',
    ]);
    expect(places(bookOf({ S: beside(logRows(2), logRows(1)) }))).toEqual(['S!A1:C5', 'S!E1:G3']);
  });

  it('leaves a card beside the log out of it, touching or not', () => {
    expect(places(bookOf({ S: beside(logRows(4), cardRows) }))).toEqual(['S!A1:C9']);
    expect(places(bookOf({ S: beside(logRows(4), cardRows, 0) }))).toEqual(['S!A1:C9']);
    expect(places(bookOf({ S: beside(cardRows, logRows(4), 0) }))).toEqual(['S!C1:E9']);
    expect(places(bookOf({ S: beside(cardTable, logRows(4)) }))).toEqual(['S!F1:H9']);
  });

  it('finds the log of a csv file below its card', () => {
    const text = 'Volume,200 L\nForm,chelated\n\nDate,Copper,Note\n2026-03-01,2.05,x\n2026-03-02,2.1,\n';
    expect(places(csvBook(text))).toEqual(['log!A4:C6']);
    expect(places(csvBook(text.replace('\n\n', '\n')))).toEqual(['log!A3:C5']);
  });

  it('takes no answer of ours for a log, whether it fills cells or was pasted', () => {
    const answer = [
      ['When', 'Copper', 'Status', 'Hold day'],
      [firstDay, 2, 'in band', 1],
    ];
    const filled = (fills: string): Written[][] => [
      [filling('When', '_xldudf_QT_HOLDROWS(Log!A1:A9,Log!B1:B9,"chelated")', fills), 'Copper', 'Reading', 'Hold day'],
      [firstDay, 2, 'in band', 1],
    ];
    const levels = [
      ['When', 'Expected', 'Low', 'High', 'Reading', 'Off by'],
      [firstDay, 2, 1, 3, 2, 0],
    ];
    expect(places(bookOf({ Filled: filled('A1:D2'), Pasted: answer, Levels: levels }))).toEqual([]);
    expect(places(bookOf({ Log: beside(logRows(2), filled('E1:H2')) }))).toEqual(['Log!A1:C5']);
    const headings: Written[] = ['Date', 'Copper'].map((value, at) => ({ value, formula: `Log!${'AB'[at]}1` }));
    expect(places(bookOf({ Copied: [headings, [firstDay, 2]] }))).toEqual([]);
  });

  it('takes no block for a log whose readings are computed, but one whose times or readings alone are', () => {
    const block = (row: (at: number) => Written[]): Book =>
      bookOf({ S: [['When', 'Expected level', 'Note'], ...Array.from({ length: 4 }, (_, at) => row(at))] });
    const formula = (value: number): Written => ({ value, formula: 'Log!B2' });
    expect(places(block((at) => [formula(firstDay + at), formula(2), null]))).toEqual([]);
    expect(
      places(block((at) => [firstDay + at, at === 0 ? filling(2, 'IF(E2:E9>0,E2:E9)', 'B2:B5') : 2, null])),
    ).toEqual([]);
    expect(places(block((at) => [formula(firstDay + at), 2, null]))).toEqual(['S!A1:C5']);
    expect(places(block((at) => [firstDay + at, formula(2), null]))).toEqual(['S!A1:C5']);
  });

  it('takes no row for headings in which a number is computed', () => {
    const held = (cell: Written): Written[][] => [
      ['Its band', null, null],
      ['Hold to date', cell, 'days without a break, to the last test'],
      ['Began', { value: firstDay, formula: '_xldudf_QT_HOLDSTART(A1:A9,B1:B9)' }, 'the first reading in the band'],
      ['An error on purpose', null, 'select it and read why'],
    ];
    const formula = '_xldudf_QT_HOLDDAYS(A1:A9,B1:B9)';
    for (const cell of [{ value: 1.5, formula }, filling(1.5, formula, 'F2')]) {
      expect(places(bookOf({ S: beside(logRows(4), held(cell)) }))).toEqual(['S!A1:C9']);
    }
  });

  it('keeps the rows of a log that has a function of ours in each', () => {
    const rows = (cell: (at: number) => Written): Written[][] => [
      ['Date', 'Copper', 'Free', 'Note'],
      ...Array.from({ length: 4 }, (_, at): Written[] => [
        at < 3 ? firstDay + at : null,
        at < 3 ? 2.2 : null,
        cell(at),
      ]),
    ];
    const formula = '_xldudf_QT_FREE(B2)';
    for (const cell of [() => ({ value: 0.1, formula }), (at: number) => filling(0.1, formula, `C${at + 2}`)]) {
      expect(places(bookOf({ S: rows(cell) }))).toEqual(['S!A1:D4']);
    }
  });

  it('ends above an answer below the log, whether its file says what it fills or not', () => {
    const formula = '_xldudf_QT_HOLDENDS(A2:A5,B2:B5,"chelated",30)';
    for (const cell of [{ value: firstDay, formula }, filling(firstDay, formula, 'B7')]) {
      for (const label of ['Held', '30 days are full on'])
        expect(places(bookOf({ S: [...logRows(2), [], [label, cell]] }))).toEqual(['S!A1:C5']);
    }
    const goesOn = [...logRows(2), [], ['Held', { value: 1, formula }], [], [firstDay + 9, 2]];
    expect(places(bookOf({ S: goesOn }))).toEqual(['S!A1:C9']);
  });

  it('ends above an answer that fills cells below the log', () => {
    const below: Written[][] = [
      [],
      [filling('From', '_xldudf_QT_HOLDS(A1:A5,B1:B5,"chelated")', 'A7:B8'), 'To'],
      [firstDay, firstDay + 1],
    ];
    expect(places(bookOf({ S: [...logRows(2), ...below] }))).toEqual(['S!A1:C5']);
  });

  it('takes named tables as they are, without their row of totals', () => {
    const range = { firstRow: 2, firstColumn: 1, lastRow: 7, lastColumn: 3 };
    const table = {
      name: 'Log',
      sheet: 'S',
      range,
      columns: ['Date', 'Copper mg/L', 'Note'],
      headings: true,
      totals: true,
    };
    const rows = [[], [], ...logRows(2).map((row) => [null, ...row]), [null, 'Total', 8]];
    expect(places(bookOf({ S: rows }, { tables: [table] }))).toEqual(['S!B3:D7']);
    expect(places(bookOf({ S: rows }, { tables: [{ ...table, totals: false }] }))).toEqual(['S!B3:D8']);
    expect(places(bookOf({ S: rows }, { tables: [{ ...table, sheet: 'T' }] }))).toEqual(['S!B3:D8']);
  });

  it('takes rows that were written below a table, and a column that a formula fills', () => {
    const range = { firstRow: 0, firstColumn: 0, lastRow: 4, lastColumn: 2 };
    const table = { name: 'Log', sheet: 'S', range, columns: [], headings: true, totals: false };
    const below = bookOf({ S: [...logRows(2), [firstDay + 3, 2.1], [], ['Seen by the vet']] }, { tables: [table] });
    expect(places(below)).toEqual(['S!A1:C6']);
    const filled: Written[][] = [
      ['Date', 'Day', 'Copper'],
      [firstDay, filling(1, 'A2:A4-A2+1', 'B2:B4'), 2],
      [firstDay + 1, 2, 2],
      [firstDay + 2, 3, 2],
    ];
    expect(places(bookOf({ S: filled }))).toEqual(['S!A1:C4']);
  });

  it('looks at hidden sheets where nothing else holds a log, or when asked', () => {
    const sheets = { Log: logRows(2), Old: logRows(3) };
    expect(places(bookOf(sheets, { hidden: ['Old'] }))).toEqual(['Log!A1:C5']);
    expect(places(bookOf(sheets, { hidden: ['Old'] }), 'old')).toEqual(['Old!A1:C7']);
    expect(places(bookOf(sheets, { hidden: ['Log', 'Old'] }))).toEqual(['Log!A1:C5', 'Old!A1:C7']);
  });

  it('names the systems of its rows as first written', () => {
    const rows = [
      ...sharedRows(['A1', 'b 2'], 2),
      [' a1', firstDay, 2],
      [7, firstDay, 2],
      ['System', 'When', 'Cu ppm', 'Dose mL'],
    ];
    expect(logsIn(bookOf({ S: rows }))[0]?.systems).toEqual(['A1', 'b 2', '7']);
    expect(logsIn(bookOf({ S: logRows(2) }))[0]?.systems).toEqual([]);
  });

  it('finds an empty log and nothing in an empty book', () => {
    expect(places(bookOf({ S: [['Date', 'Copper']] }))).toEqual(['S!A1:B1']);
    expect(places(bookOf({ S: [], T: [[]] }))).toEqual([]);
  });
});

describe('hiddenLogs', () => {
  const sheets = { Shown: [...cardRows, [], ...logRows(2)], Old: logRows(2), Lists: [['sulfate'], ['chelated']] };

  it('names hidden sheets with a log that are left out', () => {
    expect(hiddenLogs(bookOf(sheets, { hidden: ['Old', 'Lists'] }))).toEqual(['Old']);
  });

  it('names none where all sheets are shown, or where only hidden ones hold a log', () => {
    expect(hiddenLogs(bookOf(sheets))).toEqual([]);
    expect(hiddenLogs(bookOf({ Shown: [['x']], Old: logRows(2) }, { hidden: ['Old'] }))).toEqual([]);
  });
});
