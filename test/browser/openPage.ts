import { chromium as playwright, type Browser, type Page } from 'playwright-core';
import { chromium } from './whereChromium.js';

const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export async function openBrowser(): Promise<Browser> {
  return playwright.launch({ ...(chromium === undefined ? {} : { executablePath: chromium }), args: flags });
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

export async function openPage(browser: Browser, address: string): Promise<OpenedPage> {
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
