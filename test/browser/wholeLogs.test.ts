import type { Browser, Page } from 'playwright-core';
import { shopSystems } from '../../src/app/templates/demo/shop/shopSystems.js';
import { stillCutOff } from './cutOff.js';
import { openBrowser, openPage, type OpenedPage } from './openPage.js';
import { cell, goTo, openTab, sheetShown, statusText, typeInto, waitForCell } from './sheet.js';
import { whereChromium } from './whereChromium.js';

jest.setTimeout(120_000);

/** A recalculation of all sheets takes no longer than this. [ms] */
const patience = 3000;

whereChromium('whole logs in the embedded sheet', () => {
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

  const found = async (name: string, first: string): Promise<string[]> =>
    (await sheetShown(page, name)).filter((row) => row[0] === first).map((row) => row[3] ?? '');

  it('shows how each of the twelve systems stands, and what to do', async () => {
    const shop = await sheetShown(page, 'Shop');
    const standing = new Map(shop.slice(7, 7 + shopSystems.length).map((row) => [row[0], row]));
    const status = (name: string) => standing.get(name)?.[3];
    const next = (name: string) => standing.get(name)?.[6];
    expect([...standing.keys()]).toEqual(shopSystems.map(({ name }) => name));
    expect(['A1', 'A3', 'A4', 'B2'].map(status)).toEqual(['in band', 'below', 'above', 'below']);
    expect(next('A1')).toBe('nothing now');
    expect(next('A3')).toBe('nothing now');
    expect(next('A4')).toMatch(/^change water \d+ L$/);
    expect(next('B2')).toBe('test copper again');
    expect(next('B3')).toBe('take copper out');
    expect(next('C1')).toBe('test ammonia and oxygen');
    expect(next('C2')).toBe('nothing now');
    expect(next('C4')).toBe('test copper');
  });

  it('audits the system that is chosen, with the rows of the shared log', async () => {
    await openTab(page, 'One system');
    const planted: readonly (readonly [system: string, severity: string, finding: RegExp])[] = [
      ['A2', 'danger', /^Hold broken: 1\.\d+ mg\/L is below 1\.95/],
      ['A4', 'danger', /fits both doses given/],
      ['B1', 'warning', /with its decimal point back/],
      ['B2', 'warning', /^"carbon" is noted/],
      ['B4', 'warning', /longer than 96 h: the hold starts again/],
      ['C1', 'danger', /^3 fish died/],
      ['C2', 'verdict', /^open because of row \d+/],
      ['C3', 'danger', /^Moved after/],
    ];
    for (const [system, severity, finding] of planted) {
      const before = Date.now();
      await typeInto(page, 'B3', system);
      await page.waitForFunction(
        ([name, words]) => {
          const workbook = (window as unknown as { univerAPI: { getActiveWorkbook(): WorkbookInPage } }).univerAPI;
          const sheet = workbook.getActiveWorkbook().getSheetByName('One system');
          const texts = sheet.getRange('A13:D40').getDisplayValues();
          return (
            sheet.getRange('B3').getDisplayValue() === name && texts.some((row) => RegExp(words).test(row[3] ?? ''))
          );
        },
        [system, finding.source] as const,
        { timeout: 20_000 },
      );
      expect(Date.now() - before).toBeLessThan(patience);
      expect([system, (await found('One system', severity)).some((text) => finding.test(text))]).toEqual([
        system,
        true,
      ]);
    }
    expect(await stillCutOff(page, ['One system'])).toEqual([]);
  });

  it('shows fish that came in as a count, and the moment they came in as a moment', async () => {
    const second = await openPage(browser);
    await openTab(second.page, 'Past card');
    for (const [address, name] of [
      ['A101', 'DEATHS'],
      ['A131', 'FISHDAYS'],
    ] as const) {
      await second.page.evaluate(
        ([at, formula]) => {
          const { univerAPI } = window as unknown as { univerAPI: { getActiveWorkbook(): WorkbookToWrite } };
          univerAPI.getActiveWorkbook().getActiveSheet().getRange(at).setFormula(formula);
        },
        [address, `=QT.${name}('Past log'!A1:P57,A4:B13)`] as const,
      );
    }
    await waitForCell(second.page, 'Past card', 'B101', 'Came in');
    await waitForCell(second.page, 'Past card', 'A131', 'Fish');
    const shown = await sheetShown(second.page, 'Past card');
    const lot = shown[101];
    expect(Number(lot?.[1])).toBeGreaterThan(0);
    expect(lot?.slice(1, 7).join(' ')).toMatch(/^[\d ]+$/);
    const arrived = shown[130]?.indexOf('Arrived') ?? -1;
    expect(shown[131]?.[arrived]).toMatch(/^\d{4}-\d\d-\d\d \d\d:\d\d$/);
    await second.page.close();
  });

  it('finds nothing amiss in the system in which nothing went wrong', async () => {
    await typeInto(page, 'B3', 'A1');
    await waitForCell(page, 'One system', 'B4', '640');
    for (const severity of ['danger', 'warning', 'note']) expect(await found('One system', severity)).toEqual([]);
    expect(await found('One system', 'verdict')).toHaveLength(4);
  });

  it('audits the past treatment: thirty days by the keeper, not complete by its rows', async () => {
    const [verdict = ''] = await found('Past audit', 'verdict');
    expect(verdict).toMatch(/^not complete/);
    const danger = (await found('Past audit', 'danger')).join('\n');
    for (const trouble of [
      /fits both doses/,
      /changed takes the level/,
      /Hold broken/,
      /Moved after/,
      /ammonia binder/,
    ])
      expect(danger).toMatch(trouble);
    expect(danger).toMatch(/2 fish died/);
    expect((await found('Past audit', 'warning')).join('\n')).toMatch(/86\.0 h[\s\S]*Salinity 22/);
    const levels = (await sheetShown(page, 'Past levels')).slice(4).filter((row) => row[4] !== '' && row[0] !== '');
    const off = levels.map((row) => Math.abs(Number(row[5])));
    expect(off.length).toBeGreaterThan(40);
    expect(Math.max(...off)).toBeLessThan(0.06);
  });

  it('says at one moment what to do, whether the fish may go, and what days each fish has', async () => {
    const steps = await sheetShown(page, 'Past steps');
    expect(steps.map((row) => row[0])).toContain('days left');
    expect(steps.map((row) => row[6])).toContain('days reached');
    expect(steps.map((row) => row[6])).not.toContain('release');
    const fish = new Map((await sheetShown(page, 'Past fish')).map((row) => [row[0], row]));
    expect(Number(fish.get('1 yellow tang')?.[2])).toBeLessThan(Number(fish.get('6 chromis')?.[2]));
    expect(fish.get('all')?.slice(1, 7)).toEqual(['9', '0', '0', '3', '0', '4']);
  });

  it('audits the past treatment anew when a cell is changed, and back again', async () => {
    await openTab(page, 'Past log');
    const verdict = (await cell(page, 'Past audit', 'D6')).shown;
    await typeInto(page, 'C40', '1.2');
    await page.waitForFunction((shown) => {
      const workbook = (window as unknown as { univerAPI: { getActiveWorkbook(): WorkbookInPage } }).univerAPI;
      return workbook.getActiveWorkbook().getSheetByName('Past audit').getRange('D6').getDisplayValue() !== shown;
    }, verdict);
    await typeInto(page, 'C40', '2.29');
    await waitForCell(page, 'Past audit', 'D6', verdict);
    await openTab(page, 'Past audit');
    await goTo(page, 'D9');
    expect(await statusText(page)).toMatch(/^Part of the table from A4\. QT\.AUDIT\(/);
    expect(opened.complaints).toEqual([]);
  });
});

interface WorkbookInPage {
  getSheetByName(name: string): {
    getRange(address: string): { getDisplayValue(): string; getDisplayValues(): string[][] };
  };
}

interface WorkbookToWrite {
  getActiveSheet(): { getRange(address: string): { setFormula(formula: string): void } };
}
