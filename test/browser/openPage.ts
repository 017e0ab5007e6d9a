import { chromium as playwright, type Browser, type Page } from 'playwright-core';
import { chromium, flags } from './whereChromium.js';

/** The browser that all tests share; where a benchmark runs alone, one of its own. */
export async function openBrowser(): Promise<Browser> {
  const shared = process.env['BROWSER_OF_TESTS'];
  if (shared !== undefined) return playwright.connect(shared);
  return playwright.launch({ ...(chromium === undefined ? {} : { executablePath: chromium }), args: flags });
}

/** Where the server of the tests answers. */
export function addressOfPage(): string {
  const address = process.env['PAGE_OF_TESTS'];
  if (address === undefined) throw new Error('dist is not complete: npm run build');
  return address;
}

export interface OpenedPage {
  readonly page: Page;
  /** Every address the page asked for. */
  readonly requests: readonly string[];
  /** What the page complained about. */
  readonly complaints: readonly string[];
  /** Milliseconds until the demo was computed. */
  readonly readyAfter: number;
}

export async function openPage(browser: Browser, address = addressOfPage()): Promise<OpenedPage> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  const requests: string[] = [];
  const complaints: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  const start = Date.now();
  await page.goto(address);
  await page.waitForSelector('body[data-ready]', { timeout: 60_000 });
  if ((await page.getAttribute('body', 'data-ready')) !== 'yes') throw new Error(await page.innerText('#status-text'));
  return { page, requests, complaints, readyAfter: Date.now() - start };
}
