import { CommandType } from '@univerjs/core';
import { SetSelectionsOperation } from '@univerjs/preset-sheets-core';
import type { OpenedSheet } from './openSheet.js';

interface CellWatcher {
  readonly changed: () => void;
  readonly selected: () => void;
}

/** Changes of how the grid looks alone. */
const looks = /style|numfmt|col-width|row-height|auto-height|hidden|visible|frozen|gridlines|tab-color/i;

/** Tells of changed cells and of other selections, by whatever way they came about. */
export function watchCells({ api }: OpenedSheet, { changed, selected }: CellWatcher): void {
  api.addEvent(api.Event.CommandExecuted, ({ id, type }) => {
    if (id === SetSelectionsOperation.id) selected();
    else if (type === CommandType.MUTATION && id.startsWith('sheet.mutation.') && !looks.test(id)) changed();
  });
  api.addEvent(api.Event.ActiveSheetChanged, selected);
  api.getFormula().calculationResultApplied(changed);
}
