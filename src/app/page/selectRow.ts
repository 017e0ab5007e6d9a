import type { CellRange } from '../../sheet/index.js';
import type { OpenedSheet } from './openSheet.js';

/** Rows of the sheet that stay in view above the one that is gone to. */
const above = 6;

/** Goes to the sheet of a log and selects one of its rows, counted from 0. */
export function selectRow(
  { api }: OpenedSheet,
  sheet: string,
  { firstColumn, lastColumn }: CellRange,
  row: number,
): void {
  const workbook = api.getActiveWorkbook();
  const worksheet = workbook?.getSheetByName(sheet);
  if (!workbook || !worksheet) return;
  if (workbook.getActiveSheet().getSheetId() !== worksheet.getSheetId()) workbook.setActiveSheet(worksheet);
  worksheet.getRange(row, firstColumn, 1, lastColumn - firstColumn + 1).activate();
  worksheet.scrollToCell(Math.max(0, row - above), 0);
}
