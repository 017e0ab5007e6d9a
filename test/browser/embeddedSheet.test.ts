import type { Browser, Page } from 'playwright-core';
import { addressOf } from '../../src/sheet/address/addressOf.js';
import { demoPlan } from '../../src/app/templates/demo/demoPlan.js';
import { keeperLogRows } from '../../src/app/templates/demo/keeperLogRows.js';
import { cutOff, stillCutOff } from './cutOff.js';
import { addressOfPage, openBrowser, openPage, type OpenedPage } from './openPage.js';
import {
  cell,
  everySheet,
  goTo,
  openTab,
  statusText,
  typeInto,
  valueShown,
  waitForCell,
  type SheetShown,
} from './sheet.js';
import { whereChromium } from './whereChromium.js';

jest.setTimeout(120_000);

const labelledError = 'Log!H9';
const bareSerial = /^4[56]\d{3}(\.\d+)?$/;
const time = /^\d{4}-\d\d-\d\d \d\d:\d\d$/;

/** Each cell of a sheet as `Sheet!A1` with what it shows. */
const cellsOf = (sheet: SheetShown): (readonly [string, string])[] =>
  sheet.shown.flatMap((row, r) => row.map((shown, c) => [`${sheet.name}!${addressOf(r, c)}`, shown] as const));

whereChromium('the embedded sheet', () => {
  let browser: Browser;
  let opened: OpenedPage;
  let page: Page;
  /** As the demo is opened, before anything is typed. */
  let sheets: readonly SheetShown[];

  beforeAll(async () => {
    browser = await openBrowser();
    opened = await openPage(browser);
    page = opened.page;
    sheets = await everySheet(page);
  });

  afterAll(async () => {
    await browser?.close();
  });

  it('shows the demo within 15 seconds', () => {
    expect(opened.readyAfter).toBeLessThan(15_000);
  });

  it('has a language, a title, and the landmarks a screen reader looks for', async () => {
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('en');
    expect(await page.title()).toMatch(/Lazaret/);
    expect(await page.locator('body > main, body > header, body > footer').count()).toBe(3);
    expect(await page.locator('#status').getAttribute('aria-live')).toBe('polite');
  });

  it('shows every formula of the demo answered, and no error but the one that is labelled', async () => {
    expect(sheets.map(({ name }) => name)).toEqual(demoPlan.sheets.map(({ name }) => name));
    const errors = sheets.flatMap(cellsOf).filter(([, shown]) => /^#[A-Z]/.test(shown));
    expect(errors).toEqual([[labelledError, '#VALUE!']]);
    const formulas = sheets.flatMap((sheet) =>
      sheet.formulas.flatMap((row, r) => row.map((f, c) => [sheet, f, r, c] as const)),
    );
    const unanswered = formulas.filter(([sheet, f, r, c]) => f !== '' && (sheet.shown[r]?.[c] ?? '') === '');
    expect(formulas.filter(([, f]) => f.includes('QT.')).length).toBeGreaterThan(110);
    expect(unanswered.map(([sheet, f]) => `${sheet.name}: ${f}`)).toEqual([]);
  });

  it('shows no bare serial number and no long run of decimals', async () => {
    const shown = sheets.flatMap(cellsOf);
    expect(shown.filter(([, text]) => time.test(text)).length).toBeGreaterThan(150);
    expect(shown.filter(([, text]) => bareSerial.test(text) || /^-?[\d,]+\.\d{6,}$/.test(text))).toEqual([]);
  });

  it('cuts off no text, on any sheet', async () => {
    const names = demoPlan.sheets.map(({ name }) => name);
    expect(await cutOff(page, names)).toEqual([]);
  });

  it('answers a formula typed with the keyboard', async () => {
    await typeInto(page, 'H22', '=QT.STRENGTH("5 mL", "40 L", 0.5)');
    await waitForCell(page, 'Log', 'H22', '4');
    expect(await valueShown(page, 'H22')).toBe('4');
    expect(await statusText(page)).toMatch(/^QT\.STRENGTH\(dose, treats, raises\)/);
    expect((await cell(page, 'Log', 'H22')).raw).toBe(4);
  });

  it('counts the hold anew when a reading is changed, and back again', async () => {
    const row = keeperLogRows.findIndex(([when]) => when === '2026-04-03 08:10') + 2;
    expect((await cell(page, 'Log', 'H4')).shown).toBe('20.50');
    await typeInto(page, `B${row}`, '1.5');
    await waitForCell(page, 'Log', 'H4', '1.00');
    expect((await cell(page, 'Log', 'H5')).shown).toBe('2026-04-04 08:00');
    expect((await cell(page, 'Log', 'G15')).shown).toBe('2026-04-04 08:00');
    await typeInto(page, `B${row}`, '2.1');
    await waitForCell(page, 'Log', 'H4', '20.50');
  });

  it('gives the reason behind an error when its cell is selected', async () => {
    expect(await valueShown(page, 'H9')).toBe('#VALUE!');
    expect(await statusText(page)).toMatch(/ionic.*"sulfate".*"amine"/);
    await typeInto(page, 'H24', '=QT.HOLDDAYS(A1:A60,B1:B59,"chelated")');
    await waitForCell(page, 'Log', 'H24', '#VALUE!');
    expect(await valueShown(page, 'H24')).toBe('#VALUE!');
    expect(await statusText(page)).toMatch(/60 cells.*59/);
    await typeInto(page, 'H24', '=QT.HOLDSTART(A1:A5,B1:B5,"chelated")');
    await waitForCell(page, 'Log', 'H24', '#N/A');
    await goTo(page, 'H24');
    expect(await statusText(page)).toMatch(/no hold is running/);
  });

  it('keeps blank a blank, text a text and an error an error on the way to the function', async () => {
    await typeInto(page, 'G24', '=QT.MGPERL(M99)');
    await typeInto(page, 'G25', '=QT.MGPERL(B16)');
    await waitForCell(page, 'Log', 'G25', '2.15');
    expect((await cell(page, 'Log', 'G24')).raw).toBe('');
    await typeInto(page, 'G26', '=QT.MGPERL(H9)');
    await waitForCell(page, 'Log', 'G26', '#VALUE!');
    await goTo(page, 'G26');
    expect(await statusText(page)).toMatch(/#VALUE!/);
  });

  it('shows times as times in a table typed into plain cells', async () => {
    await typeInto(page, 'N3', '=QT.HOLDS(A1:A90,B1:B90,"chelated")');
    await waitForCell(page, 'Log', 'N3', 'From');
    expect((await cell(page, 'Log', 'N4')).shown).toMatch(time);
    await goTo(page, 'O4');
    expect(await statusText(page)).toMatch(/^Part of the table from N3\. QT\.HOLDS\(/);
  });

  it('offers the functions while one types, and explains the argument at hand', async () => {
    await goTo(page, 'H28');
    await page.keyboard.type('=QT.HOLDD', { delay: 40 });
    const offered = page.locator('li', { hasText: 'QT.HOLDDAYS' });
    await offered.first().waitFor();
    expect(await offered.first().innerText()).toMatch(/days/i);
    await page.keyboard.type('AYS(A1:A90,', { delay: 40 });
    const help = page.locator('.univer-text-primary-500:visible', { hasText: 'copper' });
    await help.last().waitFor();
    expect(await page.getByText(/Readings, in the same rows/).isVisible()).toBe(true);
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
  });

  it('keeps the cautions and the status line in view on every sheet', async () => {
    for (const { name } of demoPlan.sheets) {
      await openTab(page, name);
      for (const id of ['status', 'cautions']) {
        const box = await page.locator(`#${id}`).boundingBox();
        expect(box?.y ?? 0).toBeGreaterThan(0);
        expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(900);
      }
    }
    const cautions = await page.locator('#cautions').innerText();
    for (const word of [/poison/, /invertebrates/, /test/, /local rules/, /veterinarian/])
      expect(cautions).toMatch(word);
  });

  it('makes rows as tall as the texts that a new answer shows', async () => {
    await openTab(page, 'Disease');
    await typeInto(page, 'B4', 'Brooklynella');
    await waitForCell(page, 'Disease', 'A10', '');
    expect(await stillCutOff(page, ['Disease'])).toEqual([]);
    await typeInto(page, 'B4', 'unknown');
    await waitForCell(page, 'Disease', 'A6', 'unknown');
    expect(await stillCutOff(page, ['Disease'])).toEqual([]);
  });

  it('asked nothing of any other machine, and had nothing to complain about', () => {
    const outside = opened.requests.filter((url) => !url.startsWith(addressOfPage()) && !/^(data|blob):/.test(url));
    expect(opened.requests.some((url) => url.endsWith('/functions.js'))).toBe(true);
    expect(outside).toEqual([]);
    expect(opened.complaints).toEqual([]);
  });
});
