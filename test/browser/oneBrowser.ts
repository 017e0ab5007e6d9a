import { existsSync } from 'node:fs';
import { chromium as playwright } from 'playwright-core';
import bundleIsThere from '../jest/bundleIsThere';
import { runningServer } from './runningServer';
import { chromium, flags } from './whereChromium';

/** One browser and one server for all browser tests; each test file opens pages of its own in them. */
export default async function oneBrowser(): Promise<void> {
  bundleIsThere();
  if (chromium === undefined || !existsSync('dist/page.js')) return;
  const [browser, server] = await Promise.all([
    playwright.launchServer({ executablePath: chromium, args: flags }),
    runningServer(),
  ]);
  process.env['BROWSER_OF_TESTS'] = browser.wsEndpoint();
  process.env['PAGE_OF_TESTS'] = server.address;
  Object.assign(globalThis, {
    endOneBrowser: async () => {
      server.stop();
      await browser.close();
    },
  });
}
