import type { Page } from 'playwright-core';

interface StyleInPage {
  readonly fs?: number;
  readonly bl?: number;
  readonly tb?: number;
  readonly ht?: number;
}

interface RangeInPage {
  getDisplayValues(): string[][];
  getCellStyleData(): StyleInPage | null;
  getA1Notation(): string;
}

interface SheetInPage {
  getSheetName(): string;
  getMaxRows(): number;
  getMaxColumns(): number;
  getRowHeight(row: number): number;
  getColumnWidth(column: number): number;
  getMergedRanges(): { getRange(): { startRow: number; startColumn: number; endRow: number; endColumn: number } }[];
  getRange(...of: [number, number] | [number, number, number, number]): RangeInPage;
}

interface WindowOfPage {
  univerAPI: { getActiveWorkbook(): { getSheets(): SheetInPage[] } };
}

/**
 * Cells whose text does not fit: a wrapped one needs rows tall enough, a clipped or right-aligned one its own width, any
 * other may run on into the empty cells beside it. Measured with the browser's own font.
 */
export async function cutOff(page: Page, sheets: readonly string[]): Promise<string[]> {
  return page.evaluate((names) => {
    const [clip, wrap, right] = [2, 3, 3];
    const padding = 10;
    const pen = document.createElement('canvas').getContext('2d');
    if (pen === null) throw new Error('no canvas to measure text with');

    const cellsCut = (sheet: SheetInPage): string[] => {
      const [rows, columns] = [sheet.getMaxRows(), sheet.getMaxColumns()];
      const shown = sheet.getRange(0, 0, rows, columns).getDisplayValues();
      const merges = sheet.getMergedRanges().map((range) => range.getRange());
      const sum = (from: number, to: number, size: (at: number) => number): number =>
        Array.from({ length: to - from + 1 }, (_, i) => size(from + i)).reduce((total, one) => total + one, 0);

      const isCut = (text: string, row: number, column: number): boolean => {
        const style = sheet.getRange(row, column).getCellStyleData() ?? {};
        const points = style.fs ?? 10;
        pen.font = `${style.bl === 1 ? 'bold ' : ''}${points}pt Arial`;
        const needed = pen.measureText(text).width;
        const merge = merges.find(({ startRow, startColumn }) => startRow === row && startColumn === column);
        const width = sum(column, merge?.endColumn ?? column, (at) => sheet.getColumnWidth(at));
        const height = sum(row, merge?.endRow ?? row, (at) => sheet.getRowHeight(at));
        if (style.tb === wrap) return Math.ceil(needed / (width - padding)) * points * 1.5 + 6 > height;
        if (needed <= width - padding) return false;
        if (merge !== undefined || style.tb === clip || style.ht === right) return true;
        let free = width;
        for (let next = column + 1; next < columns && (shown[row]?.[next] ?? '') === ''; next++)
          free += sheet.getColumnWidth(next);
        return needed > free - padding;
      };

      return shown.flatMap((line, row) =>
        line.flatMap((text, column) =>
          text !== '' && isCut(text, row, column)
            ? [`${sheet.getSheetName()}!${sheet.getRange(row, column).getA1Notation()}: ${text}`]
            : [],
        ),
      );
    };

    return (window as unknown as WindowOfPage).univerAPI
      .getActiveWorkbook()
      .getSheets()
      .filter((sheet) => names.includes(sheet.getSheetName()))
      .flatMap(cellsCut);
  }, sheets);
}

/** What is still cut off once the sheet has had five seconds to fit its rows. */
export async function stillCutOff(page: Page, sheets: readonly string[]): Promise<string[]> {
  let cut = await cutOff(page, sheets);
  for (let tries = 0; cut.length > 0 && tries < 20; tries++) {
    await page.waitForTimeout(250);
    cut = await cutOff(page, sheets);
  }
  return cut;
}
