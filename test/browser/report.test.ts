import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { openBrowser } from './openPage.js';
import { whereChromium } from './whereChromium.js';
import { shopTreatment } from '../app/plot/demoTreatments.js';
import { reportHtml } from '../../src/app/report/reportHtml.js';
import { auditedDemo, made, pastReport, troubledReport } from '../app/report/demoReports.js';
import { faintTexts } from './faintTexts.js';
import { textsInTheWay } from './textsInTheWay.js';

whereChromium('a report in the browser', () => {
  jest.setTimeout(120_000);
  let browser: Browser;
  let folder: string;
  const asked: string[] = [];
  const complaints: string[] = [];
  const shop = shopTreatment('A2');
  const reports: Record<string, string> = {
    past: pastReport(),
    shop: reportHtml({
      audited: auditedDemo(shop, 'Shop log', 'A2'),
      file: 'shop.xlsx',
      asOf: shop.treatment.now,
      made,
    }),
    troubled: troubledReport().html,
  };

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'report-'));
    for (const [name, html] of Object.entries(reports)) writeFileSync(join(folder, `${name}.html`), html);
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function opened(name: string, width: number): Promise<Page> {
    const page = await browser.newPage({ viewport: { width, height: 900 } });
    page.on('request', (request) => asked.push(request.url()));
    page.on('pageerror', (fault) => complaints.push(fault.message));
    page.on('console', (message) => complaints.push(message.text()));
    await page.goto(pathToFileURL(join(folder, `${name}.html`)).href);
    return page;
  }

  const pagesOf = (pdf: Buffer): number => (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length;

  it.each(['A4', 'Letter'])('prints a usual treatment on two pages of %s', async (format) => {
    for (const name of ['past', 'shop']) {
      const page = await opened(name, 1200);
      expect([name, pagesOf(await page.pdf({ format, printBackground: true }))]).toEqual([name, 2]);
      await page.close();
    }
  });

  it('prints all of a very troubled log, however many pages that takes, the overview on the first', async () => {
    const page = await opened('troubled', 1200);
    expect(pagesOf(await page.pdf({ format: 'A4' }))).toBeGreaterThan(6);
    // The height of a page of A4 within its margins, as wide as that.
    await page.setViewportSize({ width: 703, height: 1036 });
    await page.emulateMedia({ media: 'print' });
    const bottom = await page.evaluate(() => document.querySelector('figure')!.getBoundingClientRect().bottom);
    expect(bottom).toBeLessThan(1036);
    await page.close();
  });

  it.each([400, 820, 1200])('fits a screen of %i pixels: nothing hangs out at the side', async (width) => {
    for (const name of Object.keys(reports)) {
      const page = await opened(name, width);
      const [room = 0, wide = 0] = await page.evaluate(() => [
        document.documentElement.clientWidth,
        document.documentElement.scrollWidth,
      ]);
      expect(wide).toBeLessThanOrEqual(room);
      await page.close();
    }
  });

  it('keeps 4.5:1 for every text, on screen and on paper', async () => {
    for (const width of [400, 1200]) {
      const page = await opened('past', width);
      for (const media of ['screen', 'print'] as const) {
        await page.emulateMedia({ media });
        const { faint, texts } = await page.evaluate(faintTexts);
        expect(faint).toEqual([]);
        expect(texts).toBeGreaterThan(200);
      }
      await page.close();
    }
  });

  it('has no text over another or outside in its plots, as the browser sets it', async () => {
    for (const name of Object.keys(reports)) {
      for (const width of [400, 1200]) {
        const page = await opened(name, width);
        const { inTheWay, texts } = await page.evaluate(textsInTheWay);
        expect([name, width, inTheWay]).toEqual([name, width, []]);
        expect(texts).toBeGreaterThan(20);
        await page.close();
      }
    }
  });

  it('asks for nothing but itself and complains about nothing', () => {
    expect(asked.length).toBeGreaterThan(5);
    expect(asked.filter((address) => !/^file:.*\/(past|shop|troubled)\.html$/.test(address))).toEqual([]);
    expect(complaints).toEqual([]);
  });
});
