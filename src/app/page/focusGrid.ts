import { IUniverInstanceService, UniverInstanceType } from '@univerjs/core';
import type { OpenedSheet } from './openSheet.js';

/** Gives the keyboard back to the grid. */
export function focusGrid({ univer }: OpenedSheet): void {
  const units = univer.__getInjector().get(IUniverInstanceService);
  const workbook = units.getCurrentUnitOfType(UniverInstanceType.UNIVER_SHEET);
  if (!workbook) return;
  units.focusUnit(workbook.getUnitId());
  document.querySelector<HTMLElement>('#sheet [contenteditable="true"]')?.focus();
}
