import { readFileSync } from 'node:fs';
import { Workbook } from 'exceljs';
import type { Browser, Page } from 'playwright-core';
import type { CellValue } from '../../src/sheet/cell/cellValue.js';
import type { Book, BookCell } from '../../src/sheet/book/book.js';
import { readBook } from '../../src/sheet/read/readBook.js';
import { partOf } from '../../src/sheet/zip/partOf.js';
import { zipEntries } from '../../src/sheet/zip/zipEntries.js';
import { cellRange } from '../../src/sheet/address/cellRange.js';
import { loggedWorkbook } from './loggedWorkbook.js';
import { addressOfPage, openBrowser, openPage, type OpenedPage } from './openPage.js';
import { dropFile, fileLine, openFile, savedFile } from './pageFiles.js';
import { cell, goTo, openTab, statusText, typeInto, waitForCell } from './sheet.js';
import { whereChromium } from './whereChromium.js';

jest.setTimeout(120_000);

function bookCell(book: Book, sheet: string, address: string): BookCell | undefined {
  const { firstRow, firstColumn } = cellRange(address);
  return book.sheets.find(({ name }) => name === sheet)?.rows[firstRow]?.[firstColumn];
}

const valueIn = (book: Book, sheet: string, address: string): CellValue | undefined =>
  bookCell(book, sheet, address)?.value;

/** The parts of an archive whose content differs. */
function changedParts(before: Uint8Array, after: Uint8Array): string[] {
  const parts = (bytes: Uint8Array): Map<string, string> =>
    new Map(zipEntries(bytes).map((entry) => [entry.name, Buffer.from(partOf(bytes, entry)).toString('latin1')]));
  const [was, is] = [parts(before), parts(after)];
  return [...new Set([...was.keys(), ...is.keys()])].filter((name) => was.get(name) !== is.get(name)).sort();
}

const day = 46082;

whereChromium('a file in the embedded sheet', () => {
  let browser: Browser;
  let opened: OpenedPage;
  let page: Page;
  let original: Uint8Array;
  const asked: string[] = [];

  beforeAll(async () => {
    browser = await openBrowser();
    opened = await openPage(browser);
    page = opened.page;
    page.on('dialog', (dialog) => {
      asked.push(dialog.message());
      void dialog.accept();
    });
    original = await loggedWorkbook({ readings: 40 });
  });

  afterAll(async () => {
    await browser?.close();
  });

  it('is opened by the button that the keyboard reaches first, and its line says what was read', async () => {
    await page.keyboard.press('F6');
    await page.keyboard.press('F6');
    await page.keyboard.press('Shift+F6');
    await page.focus('#open-input');
    expect(await page.locator('label[for="open-input"]').innerText()).toBe('Open a file…');
    await openFile(page, 'tank.xlsx', original);
    expect(await fileLine(page)).toMatch(/^tank\.xlsx: 3 sheets, 49 rows, read on this machine and sent nowhere\./);
    expect(await page.title()).toMatch(/^tank\.xlsx .*Lazaret/);
  });

  it('shows its values, and its formulas of ours computed anew', async () => {
    expect((await cell(page, 'Tank log', 'A2')).shown).toBe('2026-03-01 08:00');
    expect((await cell(page, 'Tank log', 'B2')).shown).toBe('2.20');
    expect((await cell(page, 'Answers', 'B1')).raw).toBe(19.5);
    expect((await cell(page, 'Answers', 'B2')).shown).toBe('2026-03-31 08:00');
    expect((await cell(page, 'Answers', 'B3')).raw).toBeCloseTo(2.205, 6);
  });

  it('says what stands in the file where the grid got another text, or cannot compute', async () => {
    await openTab(page, 'Answers');
    await goTo(page, 'B1');
    expect(await statusText(page)).toMatch(/In the file: =QT\.HOLDDAYS\(Readings\[When\],Readings\[Copper \(mg\/L\)\]/);
    expect((await cell(page, 'Answers', 'B4')).raw).toBe(42);
    await goTo(page, 'B4');
    expect(await statusText(page)).toMatch(/cannot compute =OTHER\.NUMBER\(1\)/);
  });

  it('is saved as a copy with the changed cells and fresh answers, all else as it was', async () => {
    await openTab(page, 'Tank log');
    await typeInto(page, 'B12', '1.5');
    await waitForCell(page, 'Answers', 'B1', '14.00');
    const copy = await savedFile(page);
    expect(copy.name).toBe('tank copy.xlsx');
    expect(changedParts(original, copy.bytes)).toEqual(['xl/worksheets/sheet1.xml', 'xl/worksheets/sheet3.xml']);
    const book = readBook(copy.bytes, copy.name);
    expect(valueIn(book, 'Tank log', 'B12')).toBe(1.5);
    expect(valueIn(book, 'Tank log', 'B11')).toBe(valueIn(readBook(original, 'x.xlsx'), 'Tank log', 'B11'));
    expect(bookCell(book, 'Answers', 'B1')).toMatchObject({
      value: expect.closeTo(14, 9),
      formula: '_xldudf_QT_HOLDDAYS(Readings[When],Readings[Copper (mg/L)],"chelated")',
    });
    expect(bookCell(book, 'Answers', 'B4')).toMatchObject({ value: 42, formula: 'OTHER.NUMBER(1)' });
    const other = new Workbook();
    await other.xlsx.load(copy.bytes.buffer as ArrayBuffer);
    expect(other.getWorksheet('Tank log')?.getCell('A1').fill).toMatchObject({ fgColor: { argb: 'FF1F4E5F' } });
    expect(await fileLine(page)).toMatch(/^tank copy\.xlsx is in your downloads\. \d cells differ/);
  });

  it('takes rows written below a table into it, in the grid and in the copy', async () => {
    await typeInto(page, 'B12', '2.2');
    await waitForCell(page, 'Answers', 'B1', '19.50');
    await typeInto(page, 'B42', '2.1');
    await typeInto(page, 'A42', '2026-03-21 08:00');
    await waitForCell(page, 'Answers', 'B1', '20.00');
    const copy = await savedFile(page);
    const book = readBook(copy.bytes, copy.name);
    expect(book.tables[0]?.range.lastRow).toBe(41);
    expect(valueIn(book, 'Tank log', 'A42')).toBeCloseTo(day + 20 + 1 / 3, 9);
    expect(bookCell(book, 'Tank log', 'A42')?.format).toBe('yyyy-mm-dd hh:mm');
    expect(valueIn(book, 'Answers', 'B1')).toBeCloseTo(20, 9);
  });

  it('understands a typed formula that names a table, and stores it as typed', async () => {
    await openTab(page, 'Answers');
    await typeInto(page, 'A6', '=QT.HOLDS(Readings[When],Readings[Copper (mg/L)],"chelated")');
    await waitForCell(page, 'Answers', 'A6', 'From');
    const copy = await savedFile(page);
    const book = readBook(copy.bytes, copy.name);
    expect(bookCell(book, 'Answers', 'A6')).toMatchObject({
      formula: '_xldudf_QT_HOLDS(Readings[When],Readings[Copper (mg/L)],"chelated")',
      dynamic: true,
      fills: cellRange('A6:F7'),
    });
    expect(valueIn(book, 'Answers', 'C7')).toBeCloseTo(20, 9);
  });

  it('is not lost without a question where it was changed since the last copy', async () => {
    const bytes = await loggedWorkbook({ readings: 5 });
    await openFile(page, 'first.xlsx', bytes);
    expect(asked).toEqual([]);
    await typeInto(page, 'B3', '2.0');
    await openFile(page, 'second.xlsx', bytes);
    expect(asked).toEqual(['first.xlsx has unsaved changes. Open second.xlsx anyway?']);
  });

  it('keeps the days of a file that counts from 1904', async () => {
    const bytes = await loggedWorkbook({ readings: 10, date1904: true });
    await openFile(page, 'old.xlsx', bytes);
    expect((await cell(page, 'Tank log', 'A2')).shown).toBe('2026-03-01 08:00');
    await typeInto(page, 'A12', '2026-03-07 08:00');
    await typeInto(page, 'B12', '2.2');
    await waitForCell(page, 'Answers', 'B1', '6.00');
    const copy = await savedFile(page);
    const book = readBook(copy.bytes, copy.name);
    expect(book.date1904).toBe(true);
    expect(valueIn(book, 'Tank log', 'A12')).toBeCloseTo(day + 6 + 1 / 3, 9);
    expect(bookCell(book, 'Answers', 'B2')?.value).toBeCloseTo(day + 30 + 1 / 3, 9);
    const [sheet] = zipEntries(copy.bytes).filter(({ name }) => name === 'xl/worksheets/sheet1.xml');
    const xml = Buffer.from(partOf(copy.bytes, sheet!)).toString();
    expect(Number(/<c r="A12"[^>]*><v>([^<]*)</.exec(xml)?.[1])).toBeCloseTo(day + 6 + 1 / 3 - 1462, 9);
  });

  it('is opened when it is dropped on the page; a table of plain text says what was found out', async () => {
    await dropFile(page, 'log.csv', 'When;Copper mg/L\r\n13.03.2026 08:00;2,05\r\n14.03.2026 08:00;2,15\r\n');
    expect(await fileLine(page)).toMatch(/^log\.csv: 1 sheet, 3 rows/);
    expect(await fileLine(page)).toMatch(/day/);
    expect((await cell(page, 'log', 'A2')).shown).toBe('2026-03-13 08:00');
    expect((await cell(page, 'log', 'B3')).raw).toBe(2.15);
    await typeInto(page, 'C1', 'Note');
    await typeInto(page, 'C2', '-1 fish');
    const copy = await savedFile(page);
    expect(copy.name).toBe('log copy.csv');
    const text = Buffer.from(copy.bytes).toString();
    expect(
      text
        .split('\r\n')
        .slice(1, 3)
        .map((line) => line.slice(0, 21)),
    ).toEqual(['2026-03-13 08:00,2.05', '2026-03-14 08:00,2.15']);
  });

  it('is refused in one sentence; what a table of plain text leaves open can be settled', async () => {
    await openFile(page, 'bad.xlsx', Buffer.from('PK\u0003\u0004 not a workbook'));
    expect(await fileLine(page)).toMatch(/^bad\.xlsx: [^.]+/);
    expect(await page.getAttribute('#file-line', 'data-kind')).toBe('refusal');
    expect((await cell(page, 'log', 'B3')).raw).toBe(2.15);
    await dropFile(page, 'open.csv', 'When,Copper mg/L\n03/04/2026 08:00,2.05\n04/04/2026 08:00,2.15\n');
    expect(await page.getAttribute('#file-line', 'data-kind')).toBe('refusal');
    await page.selectOption('#csv-dates', 'day first');
    await page.click('#csv-again');
    await page.waitForFunction(() =>
      /^open\.csv: 1 sheet/.test(document.getElementById('file-line')?.textContent ?? ''),
    );
    expect((await cell(page, 'open', 'A3')).shown).toBe('2026-04-04 08:00');
    expect((await cell(page, 'open', 'A2')).shown).toBe('2026-04-03 08:00');
    expect(await page.isHidden('#csv-choice')).toBe(true);
  });

  it('made from the demo is the file built with the page, and is read again', async () => {
    const built = new Uint8Array(readFileSync('dist/templates/demo.xlsx'));
    const second = await openPage(browser);
    const copy = await savedFile(second.page);
    expect(copy.name).toBe('demo copy.xlsx');
    expect(await fileLine(second.page)).toMatch(
      /^demo copy\.xlsx is in your downloads\. No cell differs from the demo/,
    );
    expect(Buffer.compare(copy.bytes, built)).toBe(0);
    const book = readBook(copy.bytes, copy.name);
    expect(bookCell(book, 'Log', 'H4')).toMatchObject({ value: 20.5, dynamic: true });
    expect(bookCell(book, 'Log', 'H9')?.value).toMatchObject({ basicValue: '#VALUE!' });
    expect(JSON.stringify(book.sheets)).not.toMatch(/#SPILL!|#NAME\?/);
    await second.page.close();
    await openFile(page, copy.name, copy.bytes);
    expect((await cell(page, 'Log', 'H4')).shown).toBe('20.50');
    expect((await cell(page, 'Past audit', 'D5')).shown).toMatch(/^not complete/);
  });

  it('made from the demo has what was changed in it with fresh answers, colours and frozen rows as built', async () => {
    const built = new Uint8Array(readFileSync('dist/templates/demo.xlsx'));
    const second = await openPage(browser);
    await openTab(second.page, 'Log');
    await typeInto(second.page, 'B40', '1.7');
    await waitForCell(second.page, 'Log', 'H4', '6.00');
    await typeInto(second.page, 'J6', 'mine');
    const copy = await savedFile(second.page);
    expect(await fileLine(second.page)).toMatch(/\d+ cells differ from the demo as it was made/);
    expect(changedParts(built, copy.bytes).every((name) => name.startsWith('xl/worksheets/'))).toBe(true);
    const [was, is] = [readBook(built, 'was.xlsx'), readBook(copy.bytes, copy.name)];
    expect([valueIn(is, 'Log', 'B40'), valueIn(is, 'Log', 'J6')]).toEqual([1.7, 'mine']);
    expect(bookCell(is, 'Log', 'H4')).toMatchObject({ ...bookCell(was, 'Log', 'H4'), value: expect.closeTo(6, 9) });
    expect(is.sheets.find(({ name }) => name === 'Shop log')).toEqual(
      was.sheets.find(({ name }) => name === 'Shop log'),
    );
    const other = new Workbook();
    await other.xlsx.load(copy.bytes.buffer as ArrayBuffer);
    const log = other.getWorksheet('Log');
    expect(log?.getCell('A1').fill).toMatchObject({ fgColor: { argb: 'FF37677A' } });
    expect(log?.views[0]).toMatchObject({ state: 'frozen', ySplit: 1 });
    await second.page.close();
  });

  it('is an empty sheet, with one sentence that says why, where the demo is not beside the page', async () => {
    const second = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await second.route('**/templates/demo.xlsx', (route) => route.fulfill({ status: 404, body: 'no' }));
    await second.goto(addressOfPage());
    await second.waitForSelector('body[data-ready="yes"]', { timeout: 60_000 });
    expect(await fileLine(second)).toMatch(/^demo\.xlsx is not beside this page, so the sheet is empty; [^.]+\.$/);
    expect(await second.getAttribute('#file-line', 'data-kind')).toBe('refusal');
    await typeInto(second, 'A1', '=QT.STRENGTH("5 mL", "40 L", 0.5)');
    await waitForCell(second, 'Sheet1', 'A1', '4');
    await second.close();
  });

  it('asked nothing of any other machine, and had nothing to complain about', () => {
    const outside = opened.requests.filter((url) => !url.startsWith(addressOfPage()) && !/^(data|blob):/.test(url));
    expect(outside).toEqual([]);
    expect(opened.complaints).toEqual([]);
  });
});
