import { CommandType, type IRange } from '@univerjs/core';
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
import { cellKey, sheetId } from './gridKeys.js';
import { growTables } from './growTables.js';
import { movedPlaces } from './movedPlaces.js';
import type { OpenedSheet } from './openSheet.js';
import type { ShownFile } from './shownFile.js';

const linesMoved: Readonly<Record<string, Pick<Parameters<typeof movedPlaces>[1], 'lines' | 'how'>>> = {
  [InsertRowMutation.id]: { lines: 'rows', how: 'inserted' },
  [RemoveRowMutation.id]: { lines: 'rows', how: 'deleted' },
  [InsertColMutation.id]: { lines: 'columns', how: 'inserted' },
  [RemoveColMutation.id]: { lines: 'columns', how: 'deleted' },
};

/** Keeps the named tables and ranges of an opened file in step with the grid, which knows none, and resolves them in what is typed. */
export function watchTables(sheet: OpenedSheet, shown: () => ShownFile): void {
  const { api, univer } = sheet;
  api.addEvent(api.Event.CommandExecuted, ({ id, type, params }) => {
    if (type !== CommandType.MUTATION) return;
    const file = shown();
    const how = linesMoved[id];
    if (how !== undefined) {
      const { subUnitId, range } = params as { readonly subUnitId: string; readonly range: IRange };
      const name = file.opened.book.sheets.find((_, index) => sheetId(index) === subUnitId)?.name ?? '';
      const [first, last] =
        how.lines === 'rows' ? [range.startRow, range.endRow] : [range.startColumn, range.endColumn];
      file.places = movedPlaces(file.places, { sheet: name, first, count: last - first + 1, ...how });
      file.isMoved = true;
    }
    if (id === SetRangeValuesMutation.id && file.places.tables.length > 0) growTables(sheet, file);
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
        const place = { sheet: worksheet.getName(), row, column: col, ...file.places };
        const plain = entered(plainReferences(withoutEquals(typed), place));
        if (plain === typed) return next(cell);
        file.formulas.set(cellKey(worksheet.getSheetId(), row, col), { typed, plain, isStored: false });
        return next({ ...cell, f: plain });
      },
    });
}
