import { auditTable } from '../../../src/engine/index.js';
import { demoPlan } from '../../../src/app/templates/demo/demoPlan.js';
import { planBook } from '../../../src/app/templates/plan/planBook.js';
import { auditBook } from '../../../src/app/logs/auditBook.js';
import type { AuditTerms } from '../../../src/app/logs/audited.js';
import type { Book } from '../../../src/sheet/book/book.js';
import { csvBook } from '../../sheet/csv/csvBook.js';
import { beside, bookOf, refusal } from './bookOf.js';
import { cardRows, cardTable, firstDay, logRows, sharedRows, systemCard } from './sampleRows.js';

/** Sheet, system, card, verdict of each audit. */
function told(book: Book, asked?: AuditTerms): string[] {
  return auditBook(book, asked).map((audited) => {
    const { log, system, cardFrom } = audited;
    return `${log.sheet} ${system ?? '-'} ${cardFrom}: ${String(auditTable(audited.findings).rows[0]?.[3])}`;
  });
}
const places = (book: Book, asked?: AuditTerms): string[] => told(book, asked).map((line) => line.replace(/: .*/, ''));
const why = (book: Book, asked?: AuditTerms): string => refusal(() => auditBook(book, asked));

describe('auditBook', () => {
  it('audits a log with the card beside it', () => {
    const [audited, ...others] = auditBook(bookOf({ Log: beside(logRows(31), cardRows) }));
    expect(others).toEqual([]);
    expect(audited).toMatchObject({
      system: null,
      cardFrom: 'Log!E1:F4',
      card: { volume: 200, form: 'chelated', days: 30 },
    });
    expect(audited?.cardEntries.map(({ written, name }) => [written, name])).toEqual([
      ['Volume', 'volume'],
      ['Form', 'band'],
      ['Strength', 'strength'],
      ['Days', 'days'],
    ]);
    expect(audited?.findings[0]).toMatchObject({ severity: 'verdict', code: 'verdict', answer: { kind: 'complete' } });
  });

  it('takes the card right above each of two logs on one sheet', () => {
    const other = [
      ['Volume', 50],
      ['Form', 'amine'],
    ];
    const stacked = { L: [...cardRows, [], ...logRows(2), [], [], ...other, [], ...logRows(2, 0.5)] };
    expect(places(bookOf(stacked))).toEqual(['L - L!A1:B4', 'L - L!A13:B14']);
    const beside = [...cardRows, [], ...logRows(2)].map((row, at) => [
      ...Array.from({ length: 4 }, (_, column) => row[column] ?? null),
      ...([null, null, ...other, [], ...logRows(2, 0.5)][at] ?? []),
    ]);
    expect(places(bookOf({ L: beside }))).toEqual(['L - L!A1:B4', 'L - L!E3:F4']);
    expect(why(bookOf({ L: [...cardRows, [], ...other, [], ...logRows(2)] }))).toContain(
      'several cards could be its card',
    );
  });

  it('gives two logs of one sheet no card that somebody names for one of them', () => {
    const other = [
      ['Volume', 50],
      ['Form', 'amine'],
    ];
    const stacked = { L: [...cardRows, [], ...logRows(2), [], [], ...other, [], ...logRows(2, 0.5)] };
    expect(why(bookOf(stacked), { card: 'L!A1:B4' })).toBe(
      `Sheet "L" has two logs, L!A6:C10 and L!A16:C20, and L!A1:B4 is the card for only one of them; ` +
        `write each log's card right above it, or give each log a sheet of its own`,
    );
    expect(places(bookOf({ Card: cardRows, One: logRows(3), Two: logRows(3) }), { card: 'Card!A1:B4' })).toHaveLength(
      2,
    );
  });

  it('says what is missing where several sheets or systems are there', () => {
    const other = { Log: [...cardRows, [], ...logRows(2)], Overview: logRows(1) };
    expect(why(bookOf(other))).toMatch(
      /^Sheet "Overview": no card was found; .*ask for the sheet of the real log only$/,
    );
    expect(why(bookOf({ L: sharedRows(['A1', 'D1'], 2), Card: cardRows }))).toContain(
      'at least "System", "Volume" and "Form"',
    );
  });

  it('names rows of the sheet in sentences too', () => {
    const log = [
      ['Date', 'Copper', 'WC'],
      [firstDay, 2.2, null],
      [firstDay + 1, 2.2, 0.25],
    ];
    const [audited] = auditBook(bookOf({ L: [...cardRows, [], ...log] }));
    const sentences = auditTable(audited!.findings).rows.map((row) => String(row[3]));
    expect(sentences).toContain('Row 8: change 0.25 may be litres or a share; write "0.25 L" or "25%".');
  });

  it('refuses times that are no dates', () => {
    const log = [
      ['Date', 'Copper'],
      [30.3, 2.2],
      [31.3, 2.2],
      [1.4, 2.2],
    ];
    expect(why(bookOf({ L: [...cardRows, [], ...log] }))).toBe(
      'Sheet "L", row 9: its time would be before 1950, and so would all others; write dates with day, month and year, like 2026-03-01',
    );
  });

  it('leaves later rows out', () => {
    const [audited] = auditBook(bookOf({ Log: beside(logRows(31), cardRows) }), { asOf: firstDay + 10 });
    expect(audited?.treatment).toMatchObject({ now: firstDay + 10, isAsked: true });
    expect(audited?.findings[0]).toMatchObject({ answer: { kind: 'running' } });
  });

  it('takes the card of another sheet, and for two logs each its own', () => {
    expect(places(bookOf({ 'My card': cardRows, Log: logRows(3) }))).toEqual(["Log - 'My card'!A1:B4"]);
    const two = { One: beside(logRows(3), cardRows), Two: [...cardRows, [], ...logRows(2)] };
    expect(places(bookOf(two))).toEqual(['One - One!E1:F4', 'Two - Two!A1:B4']);
    expect(places(bookOf({ Card: cardRows, One: logRows(3), Two: logRows(3) }))).toEqual([
      'One - Card!A1:B4',
      'Two - Card!A1:B4',
    ]);
    const named = {
      Cards: [...systemCard('Tank 1'), [], ...systemCard('Tank 2')],
      'Tank 1': logRows(3),
      'tank 2': logRows(2),
    };
    expect(places(bookOf(named))).toEqual(['Tank 1 Tank 1 Cards!A1:B5', 'tank 2 Tank 2 Cards!A7:B11']);
    expect(places(bookOf({ Cards: cardTable, A2: logRows(3), B1: logRows(2) }))).toEqual([
      'A2 A2 Cards!A3:D3',
      'B1 B1 Cards!A4:D4',
    ]);
  });

  it('takes the card of the sheet that is about the same thing', () => {
    const book = bookOf({ 'Past log': logRows(3), 'Past card': systemCard('Tank 1'), Log: logRows(3), Card: cardRows });
    expect(places(book)).toEqual(["Past log Tank 1 'Past card'!A1:B5", 'Log - Card!A1:B4']);
  });

  it("takes the card that names the log's one system", () => {
    const log = sharedRows(['B1'], 3);
    expect(places(bookOf({ Log: log, Cards: [...systemCard('A1'), [], ...systemCard('b1')] }))).toEqual([
      'Log B1 Cards!A7:B11',
    ]);
    expect(places(bookOf({ Log: log, Card: cardRows }))).toEqual(['Log B1 Card!A1:B4']);
    expect(why(bookOf({ Log: log, Card: systemCard('A1') }))).toMatch(/^Sheet "Log": no card was found; /);
  });

  it('audits each system of a shared log by itself', () => {
    const book = bookOf({ 'Shop log': sharedRows(['A1', 'a2', 'B1'], 4), Shop: [[], ...cardTable] });
    const audits = auditBook(book);
    expect(audits.map(({ system, cardFrom, card }) => [system, cardFrom, card.form])).toEqual([
      ['A1', 'Shop!A3:D3', 'chelated'],
      ['a2', 'Shop!A4:D4', 'amine'],
      ['B1', 'Shop!A5:D5', 'chelated'],
    ]);
    expect(audits.map(({ treatment }) => Array.from(treatment.log.row))).toEqual([
      [2, 5, 8, 11],
      [3, 6, 9, 12],
      [4, 7, 10, 13],
    ]);
    expect(places(book, { system: 'A2' })).toEqual(['Shop log a2 Shop!A4:D4']);
    expect(why(book, { system: 'C9' })).toBe('No log has a system "C9"; the file has "A1", "a2", "B1"');
    expect(why(bookOf({ L: sharedRows(['A1', 'D1'], 2), Shop: cardTable }))).toBe(
      'Sheet "L", system "D1": no card was found; write one (two columns, names and values, with at least "Volume" and "Form") ' +
        'or a row of the table of cards on sheet "Shop" with the system\'s name, or give its range, such as Card!A1:B12',
    );
  });

  it('takes a card that shows what another says only where there is no other', () => {
    const shown = (value: string | number) => ({ value, formula: 'INDEX(Shop!B2:D4,2,1)' });
    const copy = [
      ['System', 'A2'],
      ['Volume L', shown(300)],
      ['Form', shown('amine')],
    ];
    const log = sharedRows(['A1', 'A2'], 3);
    expect(places(bookOf({ L: log, One: copy, Shop: cardTable }))).toEqual(['L A1 Shop!A2:D2', 'L A2 Shop!A3:D3']);
    expect(places(bookOf({ L: sharedRows(['A2'], 3), One: copy }))).toEqual(['L A2 One!A1:B3']);
  });

  it('leaves no reading out that names no system', () => {
    const rows = [...sharedRows(['A1', 'A2'], 2), [null, firstDay + 5, 2.2], [null, firstDay + 6, null, null]];
    const book = bookOf({ L: [['Title'], ...rows], Shop: cardTable });
    expect(why(book)).toBe(
      'Sheet "L", row 7 names no system, and the log has 2; write the system there, or ask for one system',
    );
    expect(places(book, { system: 'A1' })).toEqual(['L A1 Shop!A2:D2']);
  });

  it('finds the card by a range, a name or a table', () => {
    const sheets = { Log: beside(logRows(3), systemCard('Q')), Card: [[], ...cardRows], Shop: cardTable };
    const table = { name: 'Cards', sheet: 'Shop', columns: [], headings: true, totals: false };
    const book = bookOf(sheets, {
      names: [
        { name: 'TheCard', formula: "'Card'!$A$2:$B$5" },
        { name: 'Far', formula: 'OFFSET(Card!A1,0,0,4,2)' },
      ],
      tables: [{ ...table, range: { firstRow: 0, firstColumn: 0, lastRow: 3, lastColumn: 3 } }],
    });
    expect(places(book, { card: 'Card!A2:B5' })).toEqual(['Log - Card!A2:B5']);
    expect(places(book, { card: "='card'!$a$2:$b$5" })).toEqual(['Log - Card!A2:B5']);
    expect(places(book, { card: 'Card!A:B' })).toEqual(['Log - Card!A1:B5']);
    expect(places(book, { card: 'thecard' })).toEqual(['Log - Card!A2:B5']);
    expect(places(book, { card: 'E1:F5' })).toEqual(['Log Q Log!E1:F5']);
    expect(places(book, { card: 'Cards', system: 'a2' })).toEqual(['Log A2 Shop!A3:D3']);
    expect(why(book, { card: 'Far' })).toMatch(/^"Far" is not a range of the file; write it like Card!A1:B12/);
    expect(why(book, { card: 'Crad!A1:B5' })).toBe('There is no sheet "Crad"; the file has "Log", "Card", "Shop"');
    expect(why(book, { card: 'Card!A1:C5' })).toMatch(/^Card!A1:C5 is not a card; a card has two columns, /);
    expect(why(book, { card: 'Card!C1:D5' })).toBe('Card!C1:D5: card has no volume; write volume and its value');
    expect(why(book, { card: 'Card!A2:A5' })).toMatch(/^Card!A2:A5 is not a card; /);
    for (const beyond of ['XFE1:XFE2', 'Card!A1:B1048577']) {
      expect(why(book, { card: beyond })).toMatch(/is not a range of the file; /);
    }
    expect(places(book, { card: 'Card!B5:A2' })).toEqual(['Log - Card!A2:B5']);
    expect(why(book, { card: 'not a range' })).toMatch(/^"not a range" is not a range of the file; /);
  });

  it('takes one named card for one of several systems only if it says which', () => {
    const book = bookOf({ L: sharedRows(['A1', 'A2'], 3), Named: systemCard('A2'), Card: cardRows });
    expect(places(book, { card: 'Named!A1:B5' })).toEqual(['L A2 Named!A1:B5']);
    expect(places(book, { card: 'Card!A1:B4', system: 'A1' })).toEqual(['L A1 Card!A1:B4']);
    expect(why(book, { card: 'Card!A1:B4' })).toBe(
      'Sheet "L": its log has 2 systems and Card!A1:B4 is the card for only one of them; say which system, or name the range of a table of cards with a row for each',
    );
  });

  it('says what is missing, and where', () => {
    expect(why(bookOf({ Log: logRows(2) }))).toBe(
      'Sheet "Log": no card was found; write one (two columns, names and values, with at least "Volume" and "Form") ' +
        'beside the log or on a sheet of its own, or give its range, such as Card!A1:B12',
    );
    expect(why(bookOf({ Log: logRows(2), 'C 1': cardRows, C2: cardRows }))).toBe(
      "Sheet \"Log\": several cards could be its card: 'C 1'!A1:B4 and 'C2'!A1:B4; " +
        "give the range of the right one, such as 'C 1'!A1:B4, or write the system into the log and the cards",
    );
    expect(why(bookOf({ Sheet1: [['Date', 'Fish']] }))).toBe(
      'The file has no log; a log has a heading row with a time column and a copper column, such as "Date" and "Copper mg/L", and readings below it',
    );
    expect(why(bookOf({ Log: logRows(1), Card: cardRows }), { sheet: 'Card' })).toMatch(/^Sheet "Card" has no log; /);
    expect(why(bookOf({ Log: logRows(1) }), { sheet: 'Lot' })).toBe('There is no sheet "Lot"; the file has "Log"');
    expect(
      why(
        bookOf({
          Log: logRows(1),
          Card: [
            ['Volume', 'about 50'],
            ['Form', 'amine'],
          ],
        }),
      ),
    ).toMatch(/^Card!A1:B2: card volume/);
    const twice = [...logRows(1, 2, ['Date', 'Copper', 'Cu ppm']), [], ...cardRows];
    expect(why(bookOf({ Log: twice }))).toMatch(
      /^Sheet "Log": headings "Copper" and "Cu ppm" are both read as copper; /,
    );
  });

  it('audits the sheet asked for alone', () => {
    const book = bookOf({ One: beside(logRows(3), cardRows), Two: beside(logRows(2), cardRows) }, { hidden: ['Two'] });
    expect(places(book)).toEqual(['One - One!E1:F4']);
    expect(places(book, { sheet: 'two' })).toEqual(['Two - Two!E1:F4']);
  });

  it('tells the rows of the sheet where the log begins further down', () => {
    const log = logRows(4);
    log[3]![1] = 'LOW';
    log[6]![1] = 1.2;
    const [audited] = auditBook(bookOf({ S: [...cardRows, [], ['My log'], [], ...log] }));
    const rows = auditTable(audited!.findings).rows;
    expect(new Set(rows.map(([, , row]) => row))).toEqual(new Set(['', 11, 14]));
    expect(rows.some(([, , row, finding]) => row === 11 && String(finding).includes('LOW'))).toBe(true);
    expect(audited?.findings.some(({ row }) => row === 11)).toBe(true);
    expect(rows.map(([, , , finding]) => finding).join(' ')).not.toMatch(/\brows? [1-7]\b/);
  });

  it('reads a unit that stands in a third column', () => {
    const card = [
      ['Volume', 55, 'gal'],
      ['Form', 'chelated', null],
      ['Strength', 10, 'mg/mL'],
      ['Days', 30, 'as agreed'],
    ];
    const [audited] = auditBook(bookOf({ Log: logRows(2), Card: card }));
    expect(audited?.card.volume).toBeCloseTo(208.2, 1);
    expect(
      why(
        bookOf({
          Log: logRows(2),
          Card: [
            ['Volume', 55, 'mg/L'],
            ['Form', 'chelated'],
          ],
        }),
      ),
    ).toMatch(/^Card!A1:B2: heading/);
  });

  it('audits a csv file with its card above the log', () => {
    const text =
      'Volume;200 L\nForm;chelated\n\nDate;Copper;Note\n13.03.2026;2,05;x\n14.03.2026;2,1;\n14.03.2026;1,1;\n';
    const [audited] = auditBook(csvBook(text));
    expect(audited).toMatchObject({ log: { sheet: 'log', range: { firstRow: 3, lastRow: 6 } }, cardFrom: 'log!A1:B2' });
    expect(audited?.findings.some(({ code, row }) => code === 'hold-broken' && row === 7)).toBe(true);
  });

  it('audits a log without rows', () => {
    expect(places(bookOf({ Log: beside([['Date', 'Copper']], cardRows) }))).toEqual(['Log - Log!D1:E4']);
  });

  it('finds the logs and cards of the demo workbook, and no answers of it', () => {
    const past = planBook({ ...demoPlan, sheets: demoPlan.sheets.filter(({ name }) => name.startsWith('Past')) });
    expect(told(past)).toEqual([expect.stringMatching(/^Past log Hospital tank 1 'Past card'!A4:B13: .*hold/)]);
    const shop = planBook({
      ...demoPlan,
      sheets: demoPlan.sheets.filter(({ name }) => ['Shop', 'Shop log', 'One system'].includes(name)),
    });
    expect(places(shop)).toEqual(
      ['A1', 'A2', 'A3', 'A4', 'B1', 'B2', 'B3', 'B4', 'C1', 'C2', 'C3', 'C4'].map((name, at) =>
        expect.stringMatching(new RegExp(`^Shop log ${name} Shop!K${8 + at}:Q${8 + at}$`)),
      ),
    );
  });
});
