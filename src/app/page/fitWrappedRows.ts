import {
  ICommandService,
  IUniverInstanceService,
  UniverInstanceType,
  WrapStrategy,
  type IRange,
  type Univer,
  type Workbook,
  type Worksheet,
} from '@univerjs/core';
import { SheetInterceptorService } from '@univerjs/preset-sheets-core';

/**
 * Makes rows with wrapped cells as tall as their longest text. The sheet component does so for a text that is typed, not
 * for one that a table spills. A height that a person set stays.
 */
export function fitWrappedRows(univer: Univer): void {
  const injector = univer.__getInjector();
  const workbook = injector.get(IUniverInstanceService).getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
  if (!workbook) return;
  const commands = injector.get(ICommandService);
  for (const worksheet of workbook.getSheets()) {
    const ranges = wrappedRows(workbook, worksheet);
    if (ranges.length === 0) continue;
    const fitted = injector
      .get(SheetInterceptorService)
      .generateMutationsOfAutoHeight({ unitId: workbook.getUnitId(), subUnitId: worksheet.getSheetId(), ranges });
    for (const { id, params } of fitted.redos) commands.syncExecuteCommand(id, params);
  }
}

function wrappedRows(workbook: Workbook, worksheet: Worksheet): IRange[] {
  const rows = new Set<number>();
  worksheet.getCellMatrix().forValue((row, column, cell) => {
    const wrapped = workbook.getStyles().getStyleByCell(cell)?.tb === WrapStrategy.WRAP;
    if (wrapped && worksheet.getMergedCell(row, column) === null) rows.add(row);
  });
  const endColumn = worksheet.getColumnCount() - 1;
  return [...rows].map((row) => ({ startRow: row, endRow: row, startColumn: 0, endColumn }));
}
