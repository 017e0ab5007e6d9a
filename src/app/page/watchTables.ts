import { CommandType } from '@univerjs/core';
import {
  AFTER_CELL_EDIT,
  InsertColMutation,
  InsertRowMutation,
  RemoveColMutation,
  RemoveRowMutation,
  SetRangeValuesMutation,
  SheetInterceptorService,
} from '@univerjs/preset-sheets-core';
import { entered, plainReferences, withoutEquals } from '../../sheet/index.js';
import { cellKey } from './cellKey.js';
import { growTables } from './growTables.js';
import { movedTables } from './movedTables.js';
import type { OpenedSheet } from './openSheet.js';
import type { ShownFile } from './shownFile.js';

const rowsMoved: Readonly<Record<string, 'put in' | 'taken out'>> = {
  [InsertRowMutation.id]: 'put in',
  [RemoveRowMutation.id]: 'taken out',
};
const columnsMoved: readonly string[] = [InsertColMutation.id, RemoveColMutation.id];

interface MoveParams {
  readonly subUnitId: string;
  readonly range: { readonly startRow: number; readonly endRow: number };
}

/** Keeps the named tables of an opened file where they are in the grid, which knows none, and understands them as typed. */
export function watchTables(sheet: OpenedSheet, shown: () => ShownFile): void {
  const { api, univer } = sheet;
  api.addEvent(api.Event.CommandExecuted, ({ id, type, params }) => {
    if (type !== CommandType.MUTATION) return;
    const file = shown();
    const how = rowsMoved[id];
    if (how !== undefined) {
      const { subUnitId, range } = params as MoveParams;
      const name = api.getActiveWorkbook()?.getSheetBySheetId(subUnitId)?.getSheetName() ?? '';
      const count = range.endRow - range.startRow + 1;
      file.tables = movedTables(file.tables, { sheet: name, firstRow: range.startRow, count, how });
    }
    if (how !== undefined || columnsMoved.includes(id)) file.isMoved = true;
    if (id === SetRangeValuesMutation.id && file.tables.length > 0) growTables(sheet, file);
  });
  univer
    .__getInjector()
    .get(SheetInterceptorService)
    .writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
      priority: 100,
      handler: (cell, { worksheet, row, col }, next) => {
        const file = shown();
        const typed = cell?.f;
        if (!cell || typed === null || typed === undefined) return next(cell);
        const { names } = file.opened.book;
        const place = { sheet: worksheet.getName(), row, column: col, tables: file.tables, names };
        const plain = entered(plainReferences(withoutEquals(typed), place));
        if (plain === typed) return next(cell);
        file.formulas.set(cellKey(worksheet.getSheetId(), row, col), { typed, plain, isStored: false });
        return next({ ...cell, f: plain });
      },
    });
}
