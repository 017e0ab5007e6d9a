import { auditBook } from '../../../src/app/logs/auditBook.js';
import type { Audited, AuditTerms } from '../../../src/app/logs/audited.js';
import { auditedLog, foundIn } from '../../../src/app/page/auditedLog.js';
import { gridBook } from '../../../src/app/page/gridBook.js';
import type { GridSheet } from '../../../src/app/page/gridSheets.js';
import { movedPlaces } from '../../../src/app/page/movedPlaces.js';
import type { Places } from '../../../src/app/page/shownFile.js';
import { addressRange } from '../../../src/sheet/address/addressOf.js';
import { cellRange } from '../../../src/sheet/address/cellRange.js';
import type { Book, BookTable } from '../../../src/sheet/book/book.js';
import { beside, bookOf, filling, refusal, type Written } from '../logs/bookOf.js';
import { cardRows, cardTable, logRows, sharedRows } from '../logs/sampleRows.js';
import { gridOf } from './gridOf.js';

jest.mock('@univerjs/core', () => ({}));
jest.mock('@univerjs/preset-sheets-core', () => ({}));

/** Every log of the grid audited as the panel does it, system after system. */
interface Page {
  readonly sheets?: GridSheet[];
  readonly places?: Places;
  readonly card?: string;
}

function inPage(book: Book, { sheets = gridOf(book), places = book, card = '' }: Page = {}): (Audited | string)[] {
  const found = foundIn(gridBook(sheets, { opened: { bytes: new Uint8Array(), book }, places }));
  return found.logs.flatMap((log) =>
    (log.systems.length < 2 ? [undefined] : log.systems).map((system) => auditedLog(found, log, { system, card })),
  );
}

const findingsOf = (audited: Audited | string | undefined) =>
  typeof audited === 'object' ? audited.findings.map(({ code, row }) => `${code} ${row}`) : [];

/** All that people are shown of an audit. */
const shownOf = (audits: readonly (Audited | string)[]) =>
  audits.map((audited) => {
    if (typeof audited === 'string') return audited;
    const { treatment, ...rest } = audited;
    return { ...rest, rows: [...treatment.log.row], readings: [...treatment.readings.low] };
  });

function expectSame(book: Book, asked: AuditTerms = {}): Audited[] {
  const audits = auditBook(book, asked);
  expect(shownOf(inPage(book, { card: asked.card ?? '' }))).toEqual(shownOf(audits));
  return audits;
}

const blank = (rows: number): Written[][] => Array.from({ length: rows }, () => []);

/** A log with a reading below the band in its fourth row. */
function brokenLog(days: number): Written[][] {
  return logRows(days).map((row, at) => (at === 4 ? [row[0] ?? null, 1.2, null] : row));
}

function tableAt(address: string, more: Partial<BookTable> = {}): BookTable {
  const columns = ['Date', 'Copper mg/L', 'Note'];
  return { name: 'Log', sheet: 'S', range: cellRange(address), columns, headings: true, totals: false, ...more };
}

/** A book and its grid after a row was inserted above everything on its first sheet. */
function withRowAbove(book: Book): { sheets: GridSheet[]; places: Places } {
  const [first, ...others] = gridOf(book);
  const name = book.sheets[0]?.name ?? '';
  const places = movedPlaces(book, { sheet: name, lines: 'rows', first: 0, count: 1, how: 'inserted' });
  return { sheets: first === undefined ? [] : [{ ...first, rows: [undefined, ...first.rows] }, ...others], places };
}

describe('gridBook', () => {
  const far = bookOf(
    { S: [['Harbour quarantine'], ...blank(130), ...brokenLog(6)], Card: cardRows },
    { tables: [tableAt('A132:C144')] },
  );
  const totals = bookOf(
    { S: [...cardRows, [], ...brokenLog(6), ['Total', 26.4, null], ['checked by the vet', 2]] },
    { tables: [tableAt('A6:C19', { totals: true })] },
  );

  it('finds a named table far down its sheet', () => {
    const [audited] = expectSame(far);
    expect(addressRange(audited!.log.range)).toBe('A132:C144');
    expect(findingsOf(audited)).toContain('hold-broken 136');
  });

  it('leaves the row of totals out of a table that has one', () => {
    const [audited] = expectSame(totals);
    expect(addressRange(audited!.log.range)).toBe('A6:C18');
  });

  it('takes a card by its name, and by the name of a table', () => {
    const cards = { name: 'Cards', range: cellRange('A1:D4'), sheet: 'Shop', columns: [] };
    const book = bookOf(
      { Log: brokenLog(4), Notes: [['Days', 10], ...cardRows], Shop: cardTable },
      { names: [{ name: 'TheCard', formula: 'Notes!$A$2:$B$5' }], tables: [tableAt('A1:D4', cards)] },
    );
    expect(expectSame(book, { card: 'TheCard' })[0]).toMatchObject({ cardFrom: 'Notes!A2:B5', card: { volume: 200 } });
    expect(expectSame(book, { card: 'Notes!A2:B5' })).toHaveLength(1);
    const [audited] = inPage(book, { card: 'cards' });
    expect(audited).toBe(`${refusal(() => auditBook(book, { card: 'cards' }))}.`);
  });

  it('keeps values that a formula spills into a log, and takes no spilled answer for one', () => {
    const spilled: Written[][] = [
      ['Date', 'System', 'Copper'],
      ...sharedRows(['A1', 'A2'], 3)
        .slice(1)
        .map(([system = null, when = null], at): Written[] => [
          when,
          at === 0 ? filling(system as string, 'Sheet2!A1:A6', 'B2:B7') : system,
          2.2,
        ]),
    ];
    const answer: Written[][] = [
      [filling('When', '_xldudf_QT_HOLDROWS(A1:A9,C1:C9,"chelated")', 'E1:G2'), 'Copper', 'Status'],
      [46082, 2.2, 'in band'],
    ];
    const audits = expectSame(bookOf({ L: beside(spilled, answer), Shop: cardTable }));
    expect(audits.map(({ system }) => system)).toEqual(['A1', 'A2']);
  });

  it('takes no answers beside the log for a log, though the grid does not say what single ones fill', () => {
    const held: Written[][] = [
      ['Its band', null, 'low and high limit'],
      ['Hold to date', filling(1.5, '_xldudf_QT_HOLDDAYS(A1:A9,B1:B9,"chelated")', 'F2'), 'days, to the last test'],
      ['Began', filling(46082, '_xldudf_QT_HOLDSTART(A1:A9,B1:B9,"chelated")', 'F3'), 'the first reading'],
      ['Why', null, 'because of the test'],
    ];
    expect(expectSame(bookOf({ L: beside(brokenLog(4), held), Card: cardRows }))).toHaveLength(1);
  });

  it('knows the formula of a cell that the grid cannot compute: what it fills is an answer', () => {
    const copied: Written[][] = [
      ['When', 'Copper'],
      [filling(46082, 'OTHER.ROWS(A2:B4)', 'E2:F4'), 2.2],
      [46083, 2.2],
      [46084, 2.2],
    ];
    const book = bookOf({ L: beside(brokenLog(2), copied), Card: cardRows });
    const [first, card] = gridOf(book);
    const rows = first!.rows.map((row, r) =>
      row?.map((cell, c) => {
        if (cell === undefined || c < 4 || r === 0) return cell;
        const stored = { formula: 'OTHER.ROWS(A2:B4)', fills: cellRange('E2:F4') };
        return { value: cell.value, ...(r === 1 && c === 4 ? { stored } : {}) };
      }),
    );
    expect(shownOf(inPage(book, { sheets: [{ ...first!, rows }, card!] }))).toEqual(shownOf(auditBook(book)));
  });

  it('names the rows of the sheet after a row was inserted above', () => {
    const moved = inPage(far, withRowAbove(far));
    const written = bookOf(
      { S: [[], ['Harbour quarantine'], ...blank(130), ...brokenLog(6)], Card: cardRows },
      { tables: [tableAt('A133:C145')] },
    );
    expect(shownOf(moved)).toEqual(shownOf(auditBook(written)));
    expect(findingsOf(moved[0])).toContain('hold-broken 137');
    const [audited] = inPage(totals, withRowAbove(totals));
    expect(audited).toMatchObject({ log: { range: cellRange('A7:C19') }, cardFrom: 'S!A2:B5' });
  });

  it('finds a card by its name after rows were inserted above it and its sheet was renamed', () => {
    const book = bookOf(
      { Notes: [['Days', 10], ...cardRows], Log: brokenLog(4) },
      { names: [{ name: 'TheCard', formula: 'Notes!$A$2:$B$5' }] },
    );
    const { sheets, places } = withRowAbove(book);
    const renamed = sheets.map((sheet) => (sheet.name === 'Notes' ? { ...sheet, name: "Keeper's notes" } : sheet));
    const [audited] = inPage(book, { sheets: renamed, places, card: 'TheCard' });
    expect(audited).toMatchObject({ cardFrom: "'Keeper''s notes'!A3:B6" });
  });

  it('follows an edit', () => {
    const [sheet, ...others] = gridOf(far);
    const rows = sheet!.rows.map((row, at) => (at === 139 ? [row?.[0], { value: 1.1 }] : row));
    const [audited] = inPage(far, { sheets: [{ ...sheet!, rows }, ...others] });
    expect(findingsOf(audited)).toEqual(expect.arrayContaining(['hold-broken 136', 'hold-broken 140']));
  });

  it('forgets the tables and names of a sheet that is gone', () => {
    const book = bookOf(
      { Log: brokenLog(4), Old: brokenLog(3), Card: cardRows },
      { tables: [tableAt('A1:C7', { sheet: 'Old' })], names: [{ name: 'Here', formula: '$A$1:$B$2', sheet: 'Old' }] },
    );
    const sheets = gridOf(book).filter(({ name }) => name !== 'Old');
    const { tables, names } = gridBook(sheets, { opened: { bytes: new Uint8Array(), book }, places: book });
    expect([tables, names]).toEqual([[], []]);
  });
});
