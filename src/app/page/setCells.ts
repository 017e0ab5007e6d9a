import {
  ICommandService,
  IUniverInstanceService,
  UniverInstanceType,
  type ICellData,
  type Workbook,
} from '@univerjs/core';
import { SetRangeValuesMutation } from '@univerjs/preset-sheets-core';
import type { OpenedSheet } from './openSheet.js';

/** Puts cells into a sheet of the grid, past the person's undo. */
export function setCells(
  { univer }: OpenedSheet,
  sheet: string,
  cells: Record<number, Record<number, ICellData>>,
): void {
  if (Object.keys(cells).length === 0) return;
  const injector = univer.__getInjector();
  const workbook = injector.get(IUniverInstanceService).getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
  if (!workbook) return;
  injector.get(ICommandService).syncExecuteCommand(SetRangeValuesMutation.id, {
    unitId: workbook.getUnitId(),
    subUnitId: sheet,
    cellValue: cells,
  });
}
