import { Workbook } from 'exceljs';
import type { Browser, Page } from 'playwright-core';
import { zipEntries } from '../../src/sheet/zip/zipEntries.js';
import { partOf } from '../../src/sheet/zip/partOf.js';
import { stillCutOff } from './cutOff.js';
import { openBrowser, openPage, type OpenedPage } from './openPage.js';
import { openFile, savedFile } from './pageFiles.js';
import { cell, sheetShown } from './sheet.js';
import { whereChromium } from './whereChromium.js';

jest.setTimeout(120_000);

interface StyleInPage {
  readonly bl?: number;
  readonly tb?: number;
  readonly bg?: { readonly rgb?: string } | null;
}

interface WindowOfPage {
  univerAPI: {
    getActiveWorkbook(): {
      getSheetByName(name: string): {
        getRange(address: string): { getCellStyleData(): StyleInPage | null };
        getFreeze(): { xSplit: number; ySplit: number };
        hasHiddenGridLines(): boolean;
        getRowHeight(row: number): number;
      };
    };
  };
}

const [bold, wraps] = [1, 3];

whereChromium('the looks of a file in the embedded sheet', () => {
  let browser: Browser;
  let opened: OpenedPage;
  let page: Page;

  beforeAll(async () => {
    browser = await openBrowser();
    opened = await openPage(browser);
    page = opened.page;
  });

  afterAll(async () => {
    await browser?.close();
  });

  const fromTemplate = async (kind: string): Promise<void> => {
    await page.evaluate(() => document.getElementById('file-line')?.replaceChildren());
    await page.click(`#template-${kind}`);
    await page.waitForFunction(
      (name) => document.getElementById('file-line')?.textContent?.startsWith(`${name}.xlsx:`) === true,
      kind,
    );
  };
  const styleOf = (sheet: string, address: string): Promise<StyleInPage | null> =>
    page.evaluate(
      ([name, at]) =>
        (window as unknown as WindowOfPage).univerAPI
          .getActiveWorkbook()
          .getSheetByName(name)
          .getRange(at)
          .getCellStyleData(),
      [sheet, address] as const,
    );

  it('shows the headings of the template for a tank bold, wrapped, and none cut off', async () => {
    await fromTemplate('tank');
    const headings = (await sheetShown(page, 'Log'))[0]?.filter((text) => text !== '') ?? [];
    expect(headings).toContain('Copper mg/L');
    for (const column of ['A', 'B', 'H']) {
      expect(await styleOf('Log', `${column}1`)).toMatchObject({ bl: bold, tb: wraps, bg: { rgb: '#37677a' } });
    }
    const cut = await stillCutOff(page, ['Log']);
    expect(cut.filter((text) => /^Log![A-Z]+1:/.test(text))).toEqual([]);
  });

  it('keeps its row and column in view, and draws no lines between its cells', async () => {
    const layout = await page.evaluate(() => {
      const sheet = (window as unknown as WindowOfPage).univerAPI.getActiveWorkbook().getSheetByName('Log');
      const { xSplit, ySplit } = sheet.getFreeze();
      return { xSplit, ySplit, height: sheet.getRowHeight(0), isBare: sheet.hasHiddenGridLines() };
    });
    expect(layout).toEqual({ xSplit: 1, ySplit: 1, height: expect.any(Number), isBare: true });
    expect(layout.height).toBeGreaterThan(40);
  });

  it('shows the days left of the template for a shop with one decimal, as its cells say', async () => {
    await fromTemplate('shop');
    const rows = await sheetShown(page, 'Overview');
    const top = rows.findIndex((row) => row.includes('Days left'));
    const column = rows[top]?.indexOf('Days left') ?? -1;
    const left = rows.slice(top + 1, top + 7).map((row) => row[column]);
    expect(left.filter((text) => text !== '').length).toBeGreaterThan(2);
    for (const text of left) expect(text).toMatch(/^(?:|\d+\.\d)$/);
  });

  it('lets the format of a cell go before that of its answer', async () => {
    const book = new Workbook();
    const sheet = book.addWorksheet('Log');
    sheet.addRows([
      ['When', 'Copper mg/L'],
      [new Date(Date.UTC(2026, 2, 1, 8)), 2.2],
      [new Date(Date.UTC(2026, 2, 2, 8)), 2.2],
    ]);
    const ends = '_xldudf_QT_HOLDENDS(A2:A3,B2:B3,"chelated")';
    sheet.getCell('D1').value = { formula: ends, result: 0 };
    sheet.getCell('D1').numFmt = 'dd/mm/yyyy';
    sheet.getCell('D2').value = { formula: ends, result: 0 };
    await openFile(page, 'formats.xlsx', new Uint8Array(await book.xlsx.writeBuffer()));
    expect((await cell(page, 'Log', 'D1')).shown).toBe('31/03/2026');
    expect((await cell(page, 'Log', 'D2')).shown).toBe('2026-03-31 08:00');
  });

  it('makes a row tall enough for a text that wraps, where the file says no height and nothing is computed', async () => {
    const book = new Workbook();
    const sheet = book.addWorksheet('Words');
    sheet.getColumn(1).width = 12;
    sheet.getCell('A1').value = 'A heading of many words that needs more lines than one';
    sheet.getCell('A1').alignment = { wrapText: true };
    sheet.getCell('A3').fill = { type: 'pattern', pattern: 'solid', fgColor: { argb: 'FFE6F0FA' } };
    const bytes = new Uint8Array(await book.xlsx.writeBuffer());
    await openFile(page, 'words.xlsx', bytes);
    const lines = 5;
    await page.waitForFunction(
      (wanted) =>
        (window as unknown as WindowOfPage).univerAPI.getActiveWorkbook().getSheetByName('Words').getRowHeight(0) >=
        wanted,
      lines * 15,
    );
    expect(await styleOf('Words', 'A3')).toMatchObject({ bg: { rgb: '#e6f0fa' } });
    // What is shown of a look is not written: a copy of an unchanged file has the same parts.
    const copy = await savedFile(page);
    const parts = (of: Uint8Array): string[] =>
      zipEntries(of).map((entry) => `${entry.name} ${Buffer.from(partOf(of, entry)).toString('latin1')}`);
    expect(parts(copy.bytes)).toEqual(parts(bytes));
  });

  it('had nothing to complain about', () => {
    expect(opened.complaints).toEqual([]);
  });
});
