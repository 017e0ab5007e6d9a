import type { Browser, Page } from 'playwright-core';
import { auditBook } from '../../src/app/logs/auditBook.js';
import { rangeText } from '../../src/app/logs/rangeText.js';
import { auditTable } from '../../src/engine/index.js';
import { readBook } from '../../src/sheet/read/readBook.js';
import { keptWorkbook } from './keptWorkbook.js';
import { openBrowser, openPage, type OpenedPage } from './openPage.js';
import { openFile, savedFile } from './pageFiles.js';
import { goTo, openTab, typeInto } from './sheet.js';
import { whereChromium } from './whereChromium.js';

jest.setTimeout(120_000);

interface Shown {
  readonly place: string;
  readonly card: string;
  readonly verdict: string;
  readonly findings: readonly string[];
}

const most = 8;

/** What the command line finds in a file, in the panel's words. */
function onCommandLine(bytes: Uint8Array): Shown[] {
  return auditBook(readBook(bytes, 'kept.xlsx')).map(({ log, cardFrom, findings }) => {
    const texts = auditTable(findings).rows.map(([, , , finding]) => String(finding));
    const beside = findings.flatMap(({ severity, row }, at) =>
      severity === 'verdict' ? [] : [`${severity}${row === null ? '' : `, row ${row}`}: ${texts[at] ?? ''}`],
    );
    return {
      place: rangeText(log.sheet, log.range),
      card: cardFrom,
      verdict: texts[0] ?? '',
      findings: beside.slice(0, most),
    };
  });
}

/** Nobody here can move the references of another program's formula: once its rows moved, a copy holds its values alone. */
const withoutMovedValues = (audits: readonly Shown[]): Shown[] =>
  audits.filter(({ place }) => !place.startsWith('Tank!K'));

async function inPanel(page: Page, sheet: string): Promise<Shown> {
  await openTab(page, sheet);
  await page.waitForFunction((name) => document.getElementById('panel-title')?.textContent?.startsWith(name), sheet);
  await page.waitForTimeout(800);
  const text = (id: string): Promise<string> => page.locator(`#${id}`).innerText();
  return {
    place: (await text('panel-title')).replace(', ', '!'),
    card: /card in (.*)\.$/.exec(await text('panel-why'))?.[1] ?? '',
    verdict: await text('panel-verdict'),
    findings: await page.locator('#panel-findings li').allInnerTexts(),
  };
}

const inPage = async (page: Page): Promise<Shown[]> => [await inPanel(page, 'Tank'), await inPanel(page, 'Rack')];

/** Inserts lines into the sheet that is open, as the menu of the grid does. */
async function insertLines(page: Page, act: 'insertRows' | 'insertColumns', at: number, count: number): Promise<void> {
  await page.evaluate(
    ([name, index, many]) => {
      const api = (window as unknown as Record<string, { getActiveWorkbook(): { getActiveSheet(): Lines } }>)[
        'univerAPI'
      ];
      interface Lines {
        insertRows(index: number, count: number): void;
        insertColumns(index: number, count: number): void;
      }
      api?.getActiveWorkbook().getActiveSheet()[name](index, many);
    },
    [act, at, count] as const,
  );
}

whereChromium('the audit in the page and on the command line', () => {
  let browser: Browser;
  let opened: OpenedPage;
  let page: Page;
  let bytes: Uint8Array;

  beforeAll(async () => {
    bytes = await keptWorkbook();
    browser = await openBrowser();
    opened = await openPage(browser);
    page = opened.page;
    page.on('dialog', (dialog) => void dialog.accept());
    await openFile(page, 'kept.xlsx', bytes);
  });

  afterAll(async () => {
    await browser?.close();
  });

  it('is the same for the same file: titles above, a row of totals, a table far down, cards of another sheet', async () => {
    const wanted = onCommandLine(bytes);
    expect(wanted.map(({ place, card }) => [place, card])).toEqual([
      ['Tank!A4:D24', 'Cards!A3:B6'],
      ['Rack!A140:D152', 'Cards!A10:B13'],
    ]);
    const all = wanted.flatMap(({ findings }) => findings).join('\n');
    expect(all).toMatch(/danger, row 12: Hold broken/);
    expect(all).toMatch(/Row 7: change 0\.25 may be litres or a share/);
    expect(all).toMatch(/row 146: Hold broken/);
    expect(await inPage(page)).toEqual(wanted);
  });

  it('calls nothing a log that is an answer beside it, whichever cell is selected', async () => {
    await openTab(page, 'Tank');
    for (const address of ['F8', 'H8', 'K5', 'L6', 'A30']) {
      await goTo(page, address);
      await page.waitForTimeout(700);
      expect([address, await page.locator('#panel-title').innerText()]).toEqual([address, 'Tank, A4:D24']);
    }
  });

  it('leads to the row that a sentence names', async () => {
    await page.locator('#panel-findings .row-link', { hasText: 'row 12' }).first().click();
    await page.waitForFunction(() => document.getElementById('status-cell')?.textContent === 'A12');
    expect(await page.locator('#status-value').innerText()).toBe('2026-03-04 20:00');
  });

  it('stays the same after an edit', async () => {
    await typeInto(page, 'B9', '1.3');
    await page.waitForFunction(() =>
      document.getElementById('panel-findings')?.innerText.includes('row 9: Hold broken'),
    );
    const { bytes: copy } = await savedFile(page);
    expect(await inPage(page)).toEqual(onCommandLine(copy));
  });

  it('stays the same after rows were inserted above and within', async () => {
    await openTab(page, 'Tank');
    await insertLines(page, 'insertRows', 0, 2);
    await openTab(page, 'Rack');
    await insertLines(page, 'insertRows', 141, 1);
    await openTab(page, 'Cards');
    await insertLines(page, 'insertRows', 0, 1);
    const shown = await inPage(page);
    expect(shown.map(({ place, card }) => [place, card])).toEqual([
      ['Tank!A6:D26', 'Cards!A4:B7'],
      ['Rack!A140:D153', 'Cards!A11:B14'],
    ]);
    expect(shown[0]?.findings.join('\n')).toMatch(/row 14: Hold broken/);
    const { bytes: copy } = await savedFile(page);
    expect(shown).toEqual(withoutMovedValues(onCommandLine(copy)));
    expect(readBook(copy, 'kept.xlsx').names).toMatchObject([{ name: 'TankCard', formula: 'Cards!$A$4:$B$7' }]);
  });

  it('stays the same after a column was inserted beside a log', async () => {
    await openTab(page, 'Rack');
    await insertLines(page, 'insertColumns', 0, 1);
    const shown = await inPage(page);
    expect(shown[1]?.place).toBe('Rack!B140:E153');
    const { bytes: copy } = await savedFile(page);
    expect(shown).toEqual(withoutMovedValues(onCommandLine(copy)));
  });

  it('shows a log without rows, and draws no plot of it', async () => {
    const text = 'Volume,200 L\nForm,chelated\n\nDate,Copper\n';
    const [audited] = auditBook(readBook(new TextEncoder().encode(text), 'new.csv'));
    await openFile(page, 'new.csv', new TextEncoder().encode(text));
    const shown = await inPanel(page, 'new');
    expect(shown.verdict).toBe(String(auditTable(audited?.findings ?? []).rows[0]?.[3]));
    expect([shown.place, shown.findings]).toEqual(['new!A4:B4', []]);
    expect(await page.isHidden('#panel-figure')).toBe(true);
  });

  it('had nothing to complain about', () => {
    expect(opened.complaints).toEqual([]);
  });
});
