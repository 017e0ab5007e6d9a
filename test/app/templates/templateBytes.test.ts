import { read } from '@e965/xlsx';
import { Workbook } from 'exceljs';
import { SaxesParser } from 'saxes';
import { addressOf, addressRange } from '../../../src/sheet/address/addressOf.js';
import { nodeBundle } from '../../../src/app/cli/files/nodeBundle.js';
import { isCellError } from '../../../src/sheet/cell/cellValue.js';
import { auditBook } from '../../../src/app/logs/auditBook.js';
import { logsIn } from '../../../src/app/logs/logsIn.js';
import { evaluatedBook } from '../../../src/sheet/recalc/evaluatedBook.js';
import { recalculated } from '../../../src/sheet/recalc/recalculated.js';
import { sameCell } from '../../../src/sheet/cell/sameCell.js';
import { callsOutside } from '../../../src/sheet/formula/functionName.js';
import { qtNames, outsideFunctions } from '../../../src/app/calls/outsideFunctions.js';
import { formulaAsStored } from '../../../src/sheet/formula/formulaAsStored.js';
import { planBook } from '../../../src/app/templates/plan/planBook.js';
import { loadExcelize } from '../../../src/app/templates/write/loadExcelize.js';
import { templateBytes, templatePlans, type TemplateKind } from '../../../src/app/templates/write/templateBytes.js';
import type { Book, BookCell } from '../../../src/sheet/book/book.js';
import { readBook } from '../../../src/sheet/read/readBook.js';
import { partOf } from '../../../src/sheet/zip/partOf.js';
import { zipEntries } from '../../../src/sheet/zip/zipEntries.js';

jest.setTimeout(120_000);

const bundle = nodeBundle('dist').functions;
const outside = outsideFunctions(bundle);
const now = 46_120.25;
const kinds: readonly TemplateKind[] = ['tank', 'shop', 'demo'];
/** Those with a log to write on. */
const logs = ['tank', 'shop'] as const;
const made = new Map<TemplateKind, Uint8Array>();

beforeAll(async () => {
  for (const kind of kinds) made.set(kind, await templateBytes(kind, { bundle, now }));
});

const bytesOf = (kind: TemplateKind): Uint8Array => made.get(kind) ?? new Uint8Array();
const bookOf = (kind: TemplateKind): Book => readBook(bytesOf(kind), `${kind}.xlsx`);

const partsOf = (bytes: Uint8Array): Map<string, string> =>
  new Map(zipEntries(bytes).map((entry) => [entry.name, Buffer.from(partOf(bytes, entry)).toString('utf8')]));

interface Held extends BookCell {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

const cellsOf = (book: Book): Held[] =>
  book.sheets.flatMap(({ name, rows }) =>
    rows.flatMap((cells, row) =>
      (cells ?? []).flatMap((cell, column) => (cell === undefined ? [] : [{ ...cell, sheet: name, row, column }])),
    ),
  );

const placeOf = ({ sheet, row, column }: { sheet: string; row: number; column: number }): string =>
  `${sheet}!${addressOf(row, column)}`;

const cellAt = (book: Book, sheet: string, row: number, column: number): BookCell | undefined =>
  book.sheets.find(({ name }) => name === sheet)?.rows[row]?.[column];

/** The book without the rows of its log, as after the examples were deleted. */
function withoutRows(book: Book, keep: (row: number) => boolean): Book {
  const cleared = (cell: BookCell | undefined): BookCell | undefined => cell && { ...cell, value: null };
  return {
    ...book,
    sheets: book.sheets.map((sheet) =>
      sheet.name === 'Log'
        ? { ...sheet, rows: sheet.rows.map((cells, row) => (keep(row) ? cells : cells?.map(cleared))) }
        : sheet,
    ),
  };
}

describe.each(kinds)('the workbook of the template %s', (kind) => {
  it('has parts of well-formed XML alone, and no macros', () => {
    const parts = partsOf(bytesOf(kind));
    expect(parts.size).toBeGreaterThan(20);
    for (const [name, text] of parts) {
      expect(name).toMatch(/\.(?:xml|rels)$/);
      const parser = new SaxesParser();
      parser.on('error', (error) => {
        throw new Error(`${name}: ${error.message}`);
      });
      parser.write(text).close();
    }
    expect([...parts.values()].some((text) => /<!DOCTYPE|<!ENTITY/.test(text))).toBe(false);
  });

  it('stores every formula of ours as a dynamic array with its answer', () => {
    const parts = partsOf(bytesOf(kind));
    const sheets = [...parts].filter(([name]) => name.startsWith('xl/worksheets/sheet')).map(([, text]) => text);
    const ours = templatePlans[kind].sheets.flatMap(({ cells }) =>
      cells.flatMap(({ content }) => (typeof content === 'string' && callsOutside(content, qtNames) ? [content] : [])),
    );
    expect(ours.length).toBeGreaterThanOrEqual(8);
    for (const typed of ours) {
      const stored = formulaAsStored(String(typed), qtNames)
        .replaceAll('&', '&amp;')
        .replaceAll('<', '&lt;')
        .replaceAll('>', '&gt;');
      const cells = sheets.flatMap((text) => text.match(/<c [^>]*>(?:(?!<\/c>).)*<\/c>/gs) ?? []);
      const found = cells.filter((cell) => cell.replaceAll('&#34;', '"').includes(`>${stored}</f>`));
      expect([typed, found.length]).toEqual([typed, ours.filter((other) => other === typed).length]);
      for (const cell of found) {
        expect(cell).toMatch(/^<c r="[A-Z]+\d+"[^>]* cm="1"[^>]*><f t="array" ref="[A-Z]+\d+(?::[A-Z]+\d+)?">/);
        expect(cell).toMatch(/<\/f><v>[^<]+<\/v><\/c>$/);
        expect(cell).toMatch(/_xldudf_QT_[A-Z]+\(/);
        expect(cell).not.toMatch(/QT\./);
      }
    }
  });

  it('explains the dynamic arrays in a part of their own, which workbook and content types name', () => {
    const parts = partsOf(bytesOf(kind));
    expect(parts.get('xl/metadata.xml')).toMatch(/<metadataType name="XLDAPR"/);
    expect(parts.get('xl/metadata.xml')).toMatch(/dynamicArrayProperties[^>]* fDynamic="1"/);
    expect(parts.get('xl/_rels/workbook.xml.rels')).toMatch(/relationships\/sheetMetadata"/);
    expect(parts.get('[Content_Types].xml')).toMatch(/PartName="\/xl\/metadata\.xml"[^>]*sheetMetadata\+xml"/);
  });

  it('holds the values that a fresh evaluation gives, in every cell of every formula', async () => {
    const book = bookOf(kind);
    const answers = await evaluatedBook(book, outside, { now, all: true });
    expect(answers.length).toBeGreaterThan(1500);
    const other = answers.filter(({ sheet, row, column, value }) => {
      const held = cellAt(book, sheet, row, column)?.value ?? null;
      return !sameCell(held ?? '', value ?? '');
    });
    expect(other).toEqual([]);
    const refused = answers.filter(({ reason, isKept }) => reason !== undefined || isKept === true).map(placeOf);
    expect(refused).toEqual(kind === 'demo' ? ['Log!H9'] : []);
  });

  it('shows no error but those that a chart needs, and the one that shows what a refusal is', () => {
    const errors = cellsOf(bookOf(kind)).filter(({ value }) => isCellError(value));
    expect(errors.length).toBeGreaterThan(0);
    const others = errors.filter(({ sheet, column }) => sheet !== 'Chart' || column < 7);
    expect(others.map(placeOf)).toEqual(kind === 'demo' ? ['Log!H9'] : []);
  });

  it('is the Book that was made from its plan: what stands in it, formats, tables, names, merged cells', () => {
    const [made, held] = [planBook(templatePlans[kind]), bookOf(kind)];
    const merged = ({ sheets }: Book): string[] =>
      sheets.flatMap((sheet) => sheet.merged.map((range) => `${sheet.name}!${addressRange(range)}`)).sort();
    expect(merged(held)).toEqual(merged(made));
    expect(held.tables).toEqual(made.tables);
    expect(held.names.filter(({ sheet }) => sheet === undefined)).toEqual(made.names);
    for (const cell of cellsOf(made)) {
      const found = cellAt(held, cell.sheet, cell.row, cell.column);
      const { formula, format, dynamic } = cell;
      const value = formula === undefined ? cell.value : found?.value;
      expect([placeOf(cell), { formula, format, dynamic, value }]).toEqual([
        placeOf(cell),
        { formula: found?.formula, format: found?.format, dynamic: found?.dynamic, value: found?.value },
      ]);
    }
  });

  it('is left byte for byte by a recalculation, weeks later too', async () => {
    for (const later of [0, 40]) {
      const { bytes, changes, formulas } = await recalculated(bytesOf(kind), `${kind}.xlsx`, outside, {
        now: now + later,
      });
      expect(changes).toEqual([]);
      expect(formulas).toBeGreaterThanOrEqual(8);
      expect(Buffer.compare(bytes, bytesOf(kind))).toBe(0);
    }
  });

  it('is the same for the same moment', async () => {
    expect(Buffer.compare(await templateBytes(kind, { bundle, now }), bytesOf(kind))).toBe(0);
  });

  it('is a workbook to other readers: tables, validations, formulas with values', async () => {
    const sheets = read(bytesOf(kind), { sheetStubs: true, cellFormula: true });
    expect(sheets.SheetNames).toEqual(templatePlans[kind].sheets.map(({ name }) => name));
    for (const name of sheets.SheetNames) {
      for (const [address, cell] of Object.entries(sheets.Sheets[name] ?? {})) {
        const { f, v } = cell as { f?: string; v?: unknown };
        if (!address.startsWith('!') && f !== undefined)
          expect([name, address, v !== undefined]).toEqual([name, address, true]);
      }
    }
    const book = new Workbook();
    await book.xlsx.load(Buffer.from(bytesOf(kind)) as never);
    expect(book.worksheets.map(({ name }) => name)).toEqual(sheets.SheetNames);
    for (const { name, table, frozen } of templatePlans[kind].sheets) {
      const sheet = book.getWorksheet(name);
      expect([name, sheet?.getTables().length]).toEqual([name, table === undefined ? 0 : 1]);
      if (frozen !== undefined) expect(sheet?.views[0]).toMatchObject({ state: 'frozen', ySplit: frozen.rows });
    }
    expect(book.title).toBe(templatePlans[kind].title);
    const excelize = (await loadExcelize()) as unknown as {
      OpenReader(bytes: Uint8Array): { GetSheetList(): { list: string[] } };
    };
    expect(excelize.OpenReader(bytesOf(kind)).GetSheetList().list).toEqual(sheets.SheetNames);
  });
});

describe.each(logs)('the log of the template %s', (kind) => {
  it('looks at the last row while examples are in the log, and at the clock without them', async () => {
    const [sheet, row, column] = kind === 'tank' ? (['Now', 4, 1] as const) : (['Overview', 3, 1] as const);
    const book = bookOf(kind);
    const times = cellsOf(book).filter(
      ({ sheet: name, column: at }) => name === 'Log' && at === (kind === 'tank' ? 0 : 1),
    );
    const last = Math.max(...times.map(({ value }) => (typeof value === 'number' ? value : 0)));
    expect(cellAt(book, sheet, row, column)?.value).toBeCloseTo(last, 9);
    const fresh = await evaluatedBook(
      withoutRows(book, (at) => at === 0),
      outside,
      { now, all: true },
    );
    expect(fresh.find((one) => one.sheet === sheet && one.row === row && one.column === column)?.value).toBe(now);
  });

  it('answers an empty log without an error outside its chart', async () => {
    const empty = withoutRows(bookOf(kind), (row) => row === 0);
    const answers = await evaluatedBook(empty, outside, { now, all: true });
    const errors = answers
      .filter(({ value }) => isCellError(value))
      .map(({ sheet, row, column }) => [sheet, row, column]);
    expect(errors.filter(([sheet]) => sheet !== 'Chart')).toEqual([]);
  });

  it('has charts of numbers with titles and a text alternative', () => {
    const parts = partsOf(bytesOf(kind));
    const charts = [...parts].filter(([name]) => name.startsWith('xl/charts/chart')).map(([, text]) => text);
    const plans = templatePlans[kind].sheets.flatMap((sheet) => sheet.charts);
    expect(charts.length).toBe(plans.length);
    plans.forEach(({ title, across, up, alt }, i) => {
      for (const words of [title, across.title, up.title]) expect(charts[i]).toContain(`<a:t>${words}</a:t>`);
      expect(charts[i]?.match(/<c:v>\d+(?:\.\d+)?<\/c:v>/g)?.length ?? 0).toBeGreaterThan(3);
      const drawings = [...parts].filter(([name]) => name.startsWith('xl/drawings/drawing')).map(([, text]) => text);
      expect(drawings.some((text) => text.includes(`descr="${alt}"`))).toBe(true);
    });
  });
});

describe('the audit of a new workbook', () => {
  it('finds the logs of the demo with their cards', () => {
    const audited = auditBook(bookOf('demo'));
    expect(new Set(audited.map(({ log }) => log.sheet))).toEqual(new Set(['Log', 'Past log', 'Shop log']));
    expect(audited.filter(({ log }) => log.sheet === 'Shop log').length).toBe(12);
  });

  it('finds the log and the card of the tank', () => {
    const book = bookOf('tank');
    expect(logsIn(book).map(({ sheet }) => sheet)).toEqual(['Log']);
    const [only, ...more] = auditBook(book);
    expect(more).toEqual([]);
    expect(only?.cardFrom).toMatch(/^Card!/);
    expect(only?.card.volume).toBe(120);
    expect(only?.findings.filter(({ severity }) => severity === 'danger').length).toBe(2);
  });

  it('finds the systems of the shop, each with its card', () => {
    const book = bookOf('shop');
    const audited = auditBook(book);
    expect(audited.map(({ system }) => system)).toEqual(['Q1', 'Q2', 'Q3', 'Q4', 'Q5', 'Q6']);
    for (const { cardFrom } of audited) expect(cardFrom).toMatch(/^Systems!/);
  });
});

describe('the shop at its moment', () => {
  it('shows one system of each standing', () => {
    const overview = bookOf('shop').sheets.find(({ name }) => name === 'Overview');
    const column = (heading: string): unknown[] => {
      const at = overview?.rows[9]?.findIndex((cell) => cell?.value === heading) ?? -1;
      return [11, 12, 13, 14, 15, 16].map((row) => overview?.rows[row - 1]?.[at]?.value);
    };
    expect(column('Status')).toEqual(['in band', 'below', 'below', 'above', 'in band', 'in band']);
    expect(column('Test')).toEqual(['in time', 'in time', 'in time', 'in time', 'overdue', 'in time']);
  });
});
