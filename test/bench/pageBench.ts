import { loggedWorkbook } from '../browser/loggedWorkbook.js';
import { openBrowser, openPage } from '../browser/openPage.js';
import { openFile } from '../browser/pageFiles.js';
import { runningServer } from '../browser/runningServer.js';

export interface PageTimes {
  /** Reading the file and filling the grid. [ms] */
  readonly load: number;
  /** From the filled grid to the first plot on the screen. [ms] */
  readonly plot: number;
}

/** A workbook of so many rows opened in the embedded sheet, in a page of its own. */
export async function pageBench(rows: number): Promise<PageTimes> {
  const [server, browser] = await Promise.all([runningServer(3400), openBrowser()]);
  try {
    const { page } = await openPage(browser, server.address);
    // The demo's own plot is done, and is not taken for the one that is measured.
    await page.waitForFunction(() => performance.getEntriesByName('plot shown').length > 0);
    await page.evaluate(() => performance.clearMeasures());
    await openFile(page, 'long.xlsx', await loggedWorkbook({ readings: rows }));
    await page.waitForFunction(() => performance.getEntriesByName('plot shown').length > 0);
    return await page.evaluate(() => {
      const [shown, plot] = ['file shown', 'plot shown'].map((name) => performance.getEntriesByName(name)[0]);
      const endOf = (entry: PerformanceEntry | undefined): number =>
        (entry?.startTime ?? NaN) + (entry?.duration ?? NaN);
      return { load: shown?.duration ?? NaN, plot: endOf(plot) - endOf(shown) };
    });
  } finally {
    await browser.close();
    server.stop();
  }
}
