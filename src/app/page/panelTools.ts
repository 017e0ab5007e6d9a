import { element } from './element.js';
import { LogPanel } from './logPanel.js';
import type { OpenedSheet } from './openSheet.js';
import type { ShownFile } from './shownFile.js';
import { RestedUpdate } from './restedUpdate.js';
import { CommandType } from '@univerjs/core';
import { SetSelectionsOperation } from '@univerjs/preset-sheets-core';

/** Narrower than this the panel stays closed until it is asked for. [px] */
const roomForBoth = 1200;
/** The plot on paper. [px] */
const paper = { width: 660, height: 400 };

/**
 * The panel with the plot: its button, its print, and when it follows the grid.
 *
 * @returns to be called when another file is in the grid
 */
export function panelTools(sheet: OpenedSheet, file: () => ShownFile): () => void {
  const panel = element('panel');
  const log = new LogPanel(sheet, file);
  let cellsChanged = true;
  const shown = new RestedUpdate('plot shown', () => {
    if (panel.hidden) return;
    if (cellsChanged) log.cellsChanged();
    else log.selectionChanged();
    cellsChanged = false;
  });
  openAndClose(() => shown.later());
  printed(log);
  new ResizeObserver(() => log.fit()).observe(panel);
  const changed = (rest?: number): void => {
    cellsChanged = true;
    shown.later(rest);
  };
  watchCells(sheet, { changed: () => changed(), selected: () => shown.later() });
  return () => changed(0);
}

function openAndClose(opened: () => void): void {
  const [panel, button] = [element('panel'), element('panel-button')];
  const open = (isOpen: boolean): void => {
    panel.hidden = !isOpen;
    document.body.dataset['panel'] = isOpen ? 'open' : 'closed';
    button.setAttribute('aria-expanded', String(isOpen));
    // The grid measures its room again.
    window.dispatchEvent(new Event('resize'));
    opened();
  };
  button.addEventListener('click', () => open(panel.hidden));
  element('panel-close').addEventListener('click', () => {
    open(false);
    button.focus();
  });
  open(window.innerWidth >= roomForBoth);
}

function printed(log: LogPanel): void {
  element('print-button').addEventListener('click', () => window.print());
  window.addEventListener('beforeprint', () => log.redraw(paper));
  window.addEventListener('afterprint', () => log.redraw());
}

interface CellWatcher {
  readonly changed: () => void;
  readonly selected: () => void;
}

/** Changes of how the grid looks alone. */
const looks = /style|numfmt|col-width|row-height|auto-height|hidden|visible|frozen|gridlines|tab-color/i;

/** Reports changed cells and other selections, however they came about. */
function watchCells({ api }: OpenedSheet, { changed, selected }: CellWatcher): void {
  api.addEvent(api.Event.CommandExecuted, ({ id, type }) => {
    if (id === SetSelectionsOperation.id) selected();
    else if (type === CommandType.MUTATION && id.startsWith('sheet.mutation.') && !looks.test(id)) changed();
  });
  api.addEvent(api.Event.ActiveSheetChanged, selected);
  api.getFormula().calculationResultApplied(changed);
}
