import type { CellRange } from '../../sheet/index.js';
import type { OpenedSheet } from './openSheet.js';
import type { Selected } from './chosenLog.js';
import { IUniverInstanceService, UniverInstanceType } from '@univerjs/core';

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

/** The sheet in view and the cell selected in it. */
export function selectedCell({ api }: OpenedSheet): Selected | undefined {
  const worksheet = api.getActiveWorkbook()?.getActiveSheet();
  if (worksheet === undefined) return undefined;
  const range = worksheet.getSelection()?.getActiveRange();
  return { sheet: worksheet.getSheetName(), row: range?.getRow() ?? -1, column: range?.getColumn() ?? -1 };
}

/** Gives the keyboard back to the grid. */
export function focusGrid({ univer }: OpenedSheet): void {
  const units = univer.__getInjector().get(IUniverInstanceService);
  const workbook = units.getCurrentUnitOfType(UniverInstanceType.UNIVER_SHEET);
  if (!workbook) return;
  units.focusUnit(workbook.getUnitId());
  document.querySelector<HTMLElement>('#sheet [contenteditable="true"]')?.focus();
}
