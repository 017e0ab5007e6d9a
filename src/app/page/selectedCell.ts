import type { Selected } from './chosenLog.js';
import type { OpenedSheet } from './openSheet.js';

/** The sheet in view and the cell selected in it. */
export function selectedCell({ api }: OpenedSheet): Selected | undefined {
  const worksheet = api.getActiveWorkbook()?.getActiveSheet();
  if (worksheet === undefined) return undefined;
  const range = worksheet.getSelection()?.getActiveRange();
  return { sheet: worksheet.getSheetName(), row: range?.getRow() ?? -1, column: range?.getColumn() ?? -1 };
}
