import type { Browser, Page } from 'playwright-core';
import { loggedWorkbook } from './loggedWorkbook.js';
import { openBrowser, openPage, type OpenedPage } from './openPage.js';
import { fileLine, openFile } from './pageFiles.js';
import { cell, goTo, openTab, typeInto } from './sheet.js';
import { whereChromium } from './whereChromium.js';

jest.setTimeout(120_000);

const text = (page: Page, id: string): Promise<string> => page.locator(`#${id}`).innerText();

const waitForText = (page: Page, id: string, pattern: RegExp): Promise<unknown> =>
  page.waitForFunction(([place, source]) => RegExp(source).test(document.getElementById(place)?.innerText ?? ''), [
    id,
    pattern.source,
  ] as const);

/** The parts of the page that reach out of the window, or whose text does not fit into them. */
const outside = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('#masthead *, #panel *, #status, #cautions')]
      .filter((element) => {
        if (element.offsetParent === null || element.closest('.behind, svg, #drop-hint') !== null) return false;
        const { left, right, width } = element.getBoundingClientRect();
        return width > 0 && (left < 0 || right > innerWidth + 0.5 || element.scrollWidth > element.clientWidth + 8);
      })
      .filter((element) => getComputedStyle(element).display !== 'inline')
      .map((element) => `${element.tagName} ${element.id}`),
  );

/** Ratio of light to dark between each text and what is behind it. */
const contrasts = (page: Page, selector: string): Promise<(readonly [string, number])[]> =>
  page.evaluate((wanted) => {
    const light = (colour: string): number => {
      const parts = (colour.match(/[\d.]+/g) ?? []).slice(0, 3).map((part) => Number(part) / 255);
      const [red = 0, green = 0, blue = 0] = parts.map((c) =>
        c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4,
      );
      return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    };
    const behind = (element: Element | null): string => {
      const colour = element === null ? 'rgb(255, 255, 255)' : getComputedStyle(element).backgroundColor;
      return element !== null && /, 0\)$/.test(colour) ? behind(element.parentElement) : colour;
    };
    return [...document.querySelectorAll<HTMLElement>(wanted)]
      .filter(
        (element) => element instanceof HTMLElement && element.offsetParent !== null && element.innerText.trim() !== '',
      )
      .map((element) => {
        const [a, b] = [light(getComputedStyle(element).color), light(behind(element))];
        return [element.innerText.slice(0, 30), (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05)] as const;
      });
  }, selector);

whereChromium('the plot beside the embedded sheet', () => {
  let browser: Browser;
  let opened: OpenedPage;
  let page: Page;

  beforeAll(async () => {
    browser = await openBrowser();
    opened = await openPage(browser);
    page = opened.page;
    page.on('dialog', (dialog) => void dialog.accept());
    await openFile(page, 'tank.xlsx', await loggedWorkbook({ readings: 40 }));
  });

  afterAll(async () => {
    await browser?.close();
  });

  it('shows the log of the sheet with its verdict, its card and its words', async () => {
    await waitForText(page, 'panel-title', /^Tank log, A1:D41$/);
    expect(await text(page, 'panel-why')).toBe('Judged by the card in Card!A1:B4.');
    expect(await text(page, 'panel-verdict')).toBe('running: 19.5 days of 30 unbroken so far.');
    expect(await text(page, 'panel-words')).toMatch(/40 readings/);
    expect(await page.locator('#panel-plot > svg').count()).toBe(1);
  });

  it('follows an edit: another verdict, another plot, a finding that leads to its row', async () => {
    const before = await page.locator('#panel-plot > svg').innerHTML();
    await typeInto(page, 'B20', '1.6');
    await waitForText(page, 'panel-verdict', /10\.0 days/);
    expect(await page.locator('#panel-plot > svg').innerHTML()).not.toBe(before);
    expect(await text(page, 'panel-findings')).toMatch(/danger, row 20: Hold broken: 1\.6 mg\/L is below/);
    await goTo(page, 'D1');
    await page.locator('#panel-findings .row-link', { hasText: 'row 20' }).first().click();
    await waitForText(page, 'status-cell', /^A20$/);
  });

  it('is walked through by keyboard, read out reading by reading, and leads to a row and back', async () => {
    const keys = async (...names: readonly string[]): Promise<string> => {
      for (const name of names) await page.keyboard.press(name);
      return text(page, 'panel-reading');
    };
    await goTo(page, 'A1');
    expect(await page.getAttribute('#panel-reading', 'aria-live')).toBe('polite');
    await page.keyboard.press('F6');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('panel-plot');
    expect(await keys('Home')).toBe('2026-03-01 08:00: 2.2 mg/L, in the band, hold day 1 (row 2)');
    expect(await keys('ArrowRight', 'ArrowRight')).toBe('2026-03-02 08:00: 2.28 mg/L, in the band, hold day 2 (row 4)');
    expect(await keys('End')).toMatch(/^2026-03-20 20:00: 2\.27 mg\/L, in the band, hold day 11 \(row 41\)$/);
    expect(await keys('Home', 'PageDown', 'PageDown', 'ArrowLeft', 'ArrowLeft')).toBe(
      '2026-03-10 08:00: 1.6 mg/L, below the band, no hold (row 20)',
    );
    await page.keyboard.press('Enter');
    await waitForText(page, 'status-cell', /^A20$/);
    expect(await page.locator('#panel-plot .here').count()).toBe(1);
    await page.keyboard.press('Escape');
    await page.keyboard.press('ArrowDown');
    await waitForText(page, 'status-cell', /^A21$/);
    await page.keyboard.press('F6');
    await page.keyboard.press('F6');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('open-input');
  });

  it('says of a reading that is pointed at what the keyboard reads out', async () => {
    await page.locator('#panel-plot').focus();
    await page.keyboard.press('Home');
    const place = await page.locator('#panel-plot .here').boundingBox();
    await page.keyboard.press('End');
    await page.mouse.move((place?.x ?? 0) + (place?.width ?? 0) / 2, (place?.y ?? 0) + (place?.height ?? 0) / 2);
    await waitForText(page, 'panel-reading', /\(row 2\)$/);
    await page.mouse.move(5, 5);
    await waitForText(page, 'panel-reading', /\(row 41\)$/);
  });

  it('says what a log without a card needs, and takes the card that is chosen', async () => {
    const second = await openPage(browser);
    await openTab(second.page, 'Shop log');
    await waitForText(second.page, 'panel-title', /^Shop log/);
    expect(await second.page.locator('#panel-system option').count()).toBe(12);
    await second.page.selectOption('#panel-system', 'A2');
    await waitForText(second.page, 'panel-findings', /Hold broken: 1\.\d+ mg\/L is below 1\.95/);
    await openTab(second.page, 'Past log');
    await waitForText(second.page, 'panel-title', /^Past log/);
    await second.page.selectOption('#panel-card', { label: "Hospital tank 1, 'Past card'!A4:B13" });
    await waitForText(second.page, 'panel-verdict', /^not complete/);
    await second.page.close();
  });

  it('opens and closes, and leaves the grid its room', async () => {
    const width = async (): Promise<number> => (await page.locator('#sheet').boundingBox())?.width ?? 0;
    const beside = await width();
    await page.click('#panel-close');
    expect(await page.isHidden('#panel')).toBe(true);
    expect(await width()).toBeGreaterThan(beside + 400);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('panel-button');
    await page.keyboard.press('Enter');
    expect(await page.getAttribute('#panel-button', 'aria-expanded')).toBe('true');
    expect(await width()).toBe(beside);
  });

  it('is drawn so that nothing is cut off, in wide windows and narrow ones, and can be read', async () => {
    for (const [width, height] of [
      [1280, 720],
      [900, 720],
    ] as const) {
      await page.setViewportSize({ width, height });
      await page.waitForTimeout(600);
      expect([width, await outside(page)]).toEqual([width, []]);
      for (const id of ['status', 'cautions', 'masthead']) {
        const box = await page.locator(`#${id}`).boundingBox();
        expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(height);
      }
      const read = await contrasts(page, '#masthead *, #panel *:not(svg *), #status *, #cautions');
      expect(read.length).toBeGreaterThan(15);
      expect(read.filter(([, ratio]) => ratio < 4.5)).toEqual([]);
    }
    await page.setViewportSize({ width: 1440, height: 900 });
  });

  it('prints on one page, without the grid', async () => {
    await page.emulateMedia({ media: 'print' });
    expect(await page.isVisible('#panel-plot > svg')).toBe(true);
    expect(await page.isVisible('#panel-cautions')).toBe(true);
    for (const id of ['sheet', 'masthead', 'status', 'panel-close']) expect(await page.isVisible(`#${id}`)).toBe(false);
    await page.emulateMedia({ media: null });
    const printed = (await page.pdf({ format: 'A4' })).toString('latin1');
    expect(printed.match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
  });

  it('follows a log of 20,000 rows within two seconds of its load, and lets the keeper type on', async () => {
    const bytes = await loggedWorkbook({ readings: 20_000 });
    await page.evaluate(() => performance.clearMeasures());
    await openFile(page, 'long.xlsx', bytes);
    await waitForText(page, 'panel-title', /D20001$/);
    const measures = await page.evaluate(() =>
      performance.getEntriesByType('measure').map(({ name, startTime, duration }) => ({
        name,
        from: startTime,
        to: startTime + duration,
      })),
    );
    const shown = measures.find(({ name }) => name === 'file shown');
    const drawn = measures.find(({ name, from }) => name === 'plot shown' && from >= (shown?.from ?? Infinity));
    expect((drawn?.to ?? Infinity) - (shown?.to ?? 0)).toBeLessThan(2000);
    const before = Date.now();
    await typeInto(page, 'B12', '1.5');
    expect((await cell(page, 'Tank log', 'B12')).raw).toBe(1.5);
    expect(Date.now() - before).toBeLessThan(4000);
    await waitForText(page, 'panel-findings', /row 12/);
    expect(await fileLine(page)).toMatch(/20,009 rows/);
  });

  it('had nothing to complain about', () => {
    expect(opened.complaints).toEqual([]);
  });
});
