import type { Page } from 'playwright-core';

/** What the page's scripting interface shows of a cell or a sheet. */
interface SheetInPage {
  getSheetName(): string;
  getMaxRows(): number;
  getMaxColumns(): number;
  getRange(...of: [string] | [number, number, number, number]): {
    getDisplayValue(): string;
    getDisplayValues(): string[][];
    getRawValue(): unknown;
    getFormulas(): string[][];
  };
}

interface WindowOfPage {
  univerAPI: { getActiveWorkbook(): { getSheetByName(name: string): SheetInPage; getSheets(): SheetInPage[] } };
}

/** Opens a sheet by its tab. */
export async function openTab(page: Page, name: string): Promise<void> {
  await page.locator('[data-u-comp="slide-tab-item"]', { hasText: new RegExp(`^\\s*${name}\\s*$`) }).click();
}

/** Goes to a cell as a person does: its address in the name box, Enter. */
export async function goTo(page: Page, address: string): Promise<void> {
  const box = page.locator('[data-u-comp="defined-name"] input');
  await box.click();
  await box.fill(address);
  await box.press('Enter');
  await page.waitForFunction((cell) => document.getElementById('status-cell')?.textContent === cell, address);
}

/** Goes to a cell and types into it with the keyboard. */
export async function typeInto(page: Page, address: string, text: string): Promise<void> {
  await goTo(page, address);
  await page.keyboard.type(text, { delay: 15 });
  await page.keyboard.press('Enter');
}

/** The cell's value as the line below the sheet repeats it, once it is there. */
export async function valueShown(page: Page, address: string): Promise<string> {
  await goTo(page, address);
  await page.waitForFunction(() => document.getElementById('status-value')?.textContent !== '');
  return page.locator('#status-value').innerText();
}

export async function statusText(page: Page): Promise<string> {
  return page.locator('#status-text').innerText();
}

/** What a cell shows, and its exact value. */
export async function cell(page: Page, sheet: string, address: string): Promise<{ shown: string; raw: unknown }> {
  return page.evaluate(
    ([name, at]) => {
      const range = (window as unknown as WindowOfPage).univerAPI.getActiveWorkbook().getSheetByName(name).getRange(at);
      return { shown: range.getDisplayValue(), raw: range.getRawValue() };
    },
    [sheet, address] as const,
  );
}

/** Waits until a cell shows what is wanted. */
export async function waitForCell(page: Page, sheet: string, address: string, shown: string): Promise<void> {
  await page.waitForFunction(
    ([name, at, wanted]) => {
      const workbook = (window as unknown as WindowOfPage).univerAPI.getActiveWorkbook();
      return workbook.getSheetByName(name).getRange(at).getDisplayValue() === wanted;
    },
    [sheet, address, shown] as const,
  );
}

export interface SheetShown {
  readonly name: string;
  readonly shown: readonly (readonly string[])[];
  readonly formulas: readonly (readonly string[])[];
}

/** All that one sheet shows. */
export async function sheetShown(page: Page, name: string): Promise<string[][]> {
  return page.evaluate((wanted) => {
    const sheet = (window as unknown as WindowOfPage).univerAPI.getActiveWorkbook().getSheetByName(wanted);
    return sheet.getRange(0, 0, sheet.getMaxRows(), sheet.getMaxColumns()).getDisplayValues();
  }, name);
}

/** All sheets with all they show. */
export async function everySheet(page: Page): Promise<SheetShown[]> {
  return page.evaluate(() =>
    (window as unknown as WindowOfPage).univerAPI
      .getActiveWorkbook()
      .getSheets()
      .map((sheet) => {
        const all = sheet.getRange(0, 0, sheet.getMaxRows(), sheet.getMaxColumns());
        return { name: sheet.getSheetName(), shown: all.getDisplayValues(), formulas: all.getFormulas() };
      }),
  );
}
