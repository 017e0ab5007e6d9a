import { existsSync } from 'node:fs';

const places = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** The browser of this machine: CHROMIUM names it, else it is looked for in the usual places. */
export const chromium = [process.env['CHROMIUM'] ?? '', ...places].find((place) => place !== '' && existsSync(place));

export const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/**
 * Tests that need a browser. Without one they fail on a build machine (CI=true); on a person's machine they are
 * reported as skipped, with the reason in their name.
 */
export function whereChromium(name: string, tests: () => void): void {
  if (chromium !== undefined) describe(name, tests);
  else if (process.env['CI'] === 'true') {
    describe(name, () => {
      it('finds Chromium', () => {
        throw new Error('Chromium is not installed, and CI must run the browser tests: apt-get install chromium');
      });
    });
  } else xdescribe(`${name} (no Chromium on this machine; install it, or name it in CHROMIUM)`, tests);
}
