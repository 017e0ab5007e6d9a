import type { CellRange } from '../../src/sheet/address/cellRange.js';
import { nodeBundle } from '../../src/app/cli/files/nodeBundle.js';
import { isCellError, type CellValue } from '../../src/sheet/cell/cellValue.js';
import { patchXlsx } from '../../src/sheet/patch/patchXlsx.js';
import { recalculated } from '../../src/sheet/recalc/recalculated.js';
import { sameCell } from '../../src/sheet/cell/sameCell.js';
import { callsOutside } from '../../src/sheet/formula/functionName.js';
import { qtNames, outsideFunctions } from '../../src/app/calls/outsideFunctions.js';
import { templateBytes, templatePlans, type TemplateKind } from '../../src/app/templates/write/templateBytes.js';
import type { Book, BookCell } from '../../src/sheet/book/book.js';
import { readBook } from '../../src/sheet/read/readBook.js';
import { allConverted, whereOffice } from './whereOffice.js';

jest.setTimeout(180_000);

const bundle = nodeBundle('dist').functions;
const now = 46_120.25;
const kinds = [
  ['tank', 12],
  ['shop', 11],
  ['demo', 65],
] as const;
/** Of each kind a text and a moment that it shows. */
const words: Readonly<Record<TemplateKind, readonly [text: string, moment: string]>> = {
  tank: ['Held 8.5 of 30 days', '2026-03-23 08:00'],
  shop: ['change water 34.5 L', '2026-05-18 08:50'],
  demo: ['An error on purpose', '2026-04-14 20:00'],
};
const made = new Map<TemplateKind, Uint8Array>();

const bytesOf = (kind: TemplateKind): Uint8Array => made.get(kind) ?? new Uint8Array();

/** What LibreOffice makes of a template; "plain" where the answers of its arrays stand in it as values. */
interface ByOffice {
  readonly pdf: Uint8Array;
  readonly plainPdf: Uint8Array;
  readonly plainHtml: Uint8Array;
  readonly saved: Uint8Array;
}
const office = new Map<TemplateKind, ByOffice>();
const byOffice = (kind: TemplateKind): ByOffice => office.get(kind)!;

/** One start of LibreOffice for each format. */
function convertAll(): void {
  const files = kinds.map(([kind]) => bytesOf(kind));
  const plain = files.map(withPlainAnswers);
  const pdf = allConverted(files, { from: 'xlsx', to: 'pdf' });
  const plainPdf = allConverted(plain, { from: 'xlsx', to: 'pdf' });
  const plainHtml = allConverted(plain, { from: 'xlsx', to: 'html' });
  const saved = allConverted(files, { from: 'xlsx', to: 'xlsx' });
  kinds.forEach(([kind], i) =>
    office.set(kind, { pdf: pdf[i]!, plainPdf: plainPdf[i]!, plainHtml: plainHtml[i]!, saved: saved[i]! }),
  );
}

const bookOf = (bytes: Uint8Array): Book => readBook(bytes, 'book.xlsx');

interface Held extends BookCell {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** Whether two values are the same but for the digits that LibreOffice does not store. */
const isClose = (a: CellValue, b: CellValue): boolean =>
  typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) <= 1e-10 * Math.abs(b) : sameCell(a, b);

const isIn = (row: number, column: number, { firstRow, lastRow, firstColumn, lastColumn }: CellRange): boolean =>
  firstRow <= row && row <= lastRow && firstColumn <= column && column <= lastColumn;

const cellsOf = (book: Book): Held[] =>
  book.sheets.flatMap(({ name, rows }) =>
    rows.flatMap((cells, row) =>
      (cells ?? []).flatMap((cell, column) => (cell === undefined ? [] : [{ ...cell, sheet: name, row, column }])),
    ),
  );

/**
 * The workbook with the answers of its arrays as plain values. LibreOffice computes every array anew when it opens a file
 * and knows none of our functions: only so can what it makes of the pages be looked at.
 */
const withPlainAnswers = (bytes: Uint8Array): Uint8Array =>
  patchXlsx(
    bytes,
    cellsOf(bookOf(bytes))
      .filter(({ fills }) => fills !== undefined)
      .map(({ sheet, row, column, value }) => ({ sheet, row, column, value, formula: null })),
  );

const pagesOf = (pdf: Uint8Array): number =>
  Buffer.from(pdf)
    .toString('latin1')
    .match(/\/Type\s*\/Page(?![a-z])/gi)?.length ?? 0;

/** The words that LibreOffice shows, all sheets one after the other. */
const shownBy = (bytes: Uint8Array): string =>
  Buffer.from(bytes)
    .toString('utf8')
    .replace(/<style[\s\S]*?<\/style>/gi, ' ')
    .replace(/<[^>]+>/g, ' ')
    .replace(/&nbsp;/g, ' ')
    .replace(/&quot;/g, '"')
    .replace(/\s+/g, ' ');

whereOffice('the templates in LibreOffice', () => {
  beforeAll(async () => {
    for (const [kind] of kinds) made.set(kind, await templateBytes(kind, { bundle, now }));
    convertAll();
  }, 180_000);

  it.each(kinds)('%s: prints on %i pages, as made and with plain answers', (kind, pages) => {
    expect(pagesOf(byOffice(kind).pdf)).toBe(pages);
    expect(pagesOf(byOffice(kind).plainPdf)).toBe(pages);
  });

  it.each(kinds)('%s: shows every sheet and no error, dates as dates', (kind) => {
    const shown = shownBy(byOffice(kind).plainHtml);
    for (const { name } of templatePlans[kind].sheets) expect(shown).toContain(name);
    expect(shown.match(/#NAME\?|Err:\d+|#REF!|#DIV\/0!|#{3,}/g) ?? []).toEqual([]);
    const [text, moment] = words[kind];
    expect(shown).toContain(text);
    expect(shown).toContain(moment);
    expect(shown).not.toMatch(/\b46\d{3}\.\d+/);
  });

  it.each(kinds)('%s: what it saves keeps tables, names, values, rules for input and charts', (kind) => {
    const before = bookOf(bytesOf(kind));
    const { saved } = byOffice(kind);
    const after = bookOf(saved);
    expect(after.sheets.map(({ name }) => name)).toEqual(before.sheets.map(({ name }) => name));
    expect(after.tables.map(({ name, range }) => [name, range]).sort()).toEqual(
      before.tables.map(({ name, range }) => [name, range]).sort(),
    );
    for (const { name } of templatePlans[kind].names) expect(after.names.map((one) => one.name)).toContain(name);
    const log = cellsOf(before).filter(({ sheet }) => sheet === 'Log');
    const filled = log.flatMap(({ fills }) => (fills === undefined ? [] : [fills]));
    const typed = log.filter(
      ({ formula, value, row, column }) =>
        formula === undefined && value !== null && !filled.some((range) => isIn(row, column, range)),
    );
    expect(typed.length).toBeGreaterThan(100);
    for (const { sheet, row, column, value } of typed) {
      const held = after.sheets.find(({ name }) => name === sheet)?.rows[row]?.[column]?.value ?? null;
      expect([row, column, sameCell(held, value)]).toEqual([row, column, true]);
    }
    const text = Buffer.from(saved).toString('latin1');
    const charts = templatePlans[kind].sheets.flatMap((sheet) => sheet.charts).length;
    expect(new Set(text.match(/xl\/charts\/chart\d+\.xml/g) ?? []).size).toBe(charts);
  });

  it.each(kinds)(
    '%s: what it saves without our functions has all answers again after a recalculation',
    async (kind) => {
      const { saved } = byOffice(kind);
      const lost = cellsOf(bookOf(saved)).filter(
        ({ formula, value }) => formula !== undefined && callsOutside(formula, qtNames) && isCellError(value),
      );
      expect(lost.length).toBeGreaterThan(0);
      const { bytes } = await recalculated(saved, `${kind}.xlsx`, outsideFunctions(bundle), { now });
      const again = bookOf(bytes);
      const answered = cellsOf(bookOf(bytesOf(kind))).filter(
        ({ formula }) => formula !== undefined && callsOutside(formula, qtNames),
      );
      for (const { sheet, row, column, value } of answered) {
        const held = again.sheets.find(({ name }) => name === sheet)?.rows[row]?.[column]?.value ?? null;
        expect([sheet, row, column, isClose(held, value)]).toEqual([sheet, row, column, true]);
      }
    },
  );
});
