import { addressRange } from '../../sheet/index.js';
import type { Audited } from '../logs/audited.js';
import type { FoundLog } from '../logs/found.js';
import { rangeText } from '../logs/rangeText.js';
import type { PlotData } from '../plot/plotData.js';
import { auditedLog, type Found, foundIn } from './auditedLog.js';
import { choiceBox } from './choiceBox.js';
import { chosenLog } from './chosenLog.js';
import { focusGrid, selectedCell, selectRow } from './gridSelection.js';
import { gridBook } from './gridBook.js';
import { gridSheets } from './gridSheets.js';
import type { OpenedSheet } from './openSheet.js';
import { PanelPlot } from './panelPlot.js';
import { showAudited, showWhyNot } from './showAudited.js';
import type { ShownFile } from './shownFile.js';
import { element, showText } from './element.js';

const noLog =
  'No log was found. A log has a heading row with a time and a copper column, such as When and Copper mg/L, and readings below.';

/** The plot of the selected log beside the grid, in step with the grid's cells and its selection. */
export class LogPanel {
  private found: Found | undefined;
  private log: FoundLog | undefined;
  system: string | undefined;
  card: string | undefined;
  private data: PlotData | undefined;
  private width = 0;
  private readonly plot: PanelPlot;

  constructor(
    private readonly sheet: OpenedSheet,
    private readonly file: () => ShownFile,
  ) {
    this.plot = new PanelPlot({ chosen: (row) => this.goTo(row), left: () => focusGrid(sheet) });
  }

  /** Cells changed: everything is worked out again. */
  cellsChanged(): void {
    this.found = undefined;
    this.show();
  }

  /** Another cell was selected: only another log needs another plot. */
  selectionChanged(): void {
    if (this.found === undefined) return this.show();
    if (chosenLog(this.found.logs, selectedCell(this.sheet), this.log) !== this.log) this.show();
  }

  /** Draws the plot for the room it has now, or for paper. */
  redraw(size = plotSize()): void {
    this.width = size.width;
    if (this.data !== undefined) this.plot.draw(this.data, size.width, size.height);
  }

  /** The panel has another width. */
  fit(): void {
    if (plotSize().width !== this.width) this.redraw();
  }

  private show(): void {
    this.found ??= foundIn(gridBook(gridSheets(this.sheet), this.file()));
    this.log = chosenLog(this.found.logs, selectedCell(this.sheet), this.log);
    showText('panel-title', this.log === undefined ? 'Plot of a log' : placeOf(this.log));
    this.choose(this.found, this.log);
    const audited = this.log === undefined ? noLog : auditedLog(this.found, this.log, this);
    if (typeof audited === 'string') {
      this.data = undefined;
      showWhyNot(audited);
    } else this.showPlot(audited);
  }

  private showPlot(audited: Audited): void {
    this.data = showAudited(audited, (row) => this.goTo(row));
    this.redraw();
  }

  private choose({ cards }: Found, log: FoundLog | undefined): void {
    const systems = log?.systems ?? [];
    const again = (choice: { system?: string; card?: string }): void => {
      Object.assign(this, choice);
      this.show();
    };
    const [system, card] = [this.system, this.card];
    this.system = choiceBox({
      ...{ id: 'panel-system', values: systems, before: system, isShown: systems.length > 1 },
      chosen: (value) => again({ system: value }),
    });
    const places = ['', ...cards.map(({ sheet, range }) => rangeText(sheet, range))];
    this.card = choiceBox({
      ...{ id: 'panel-card', values: places, before: card, isShown: log !== undefined && cards.length > 1 },
      texts: ['as found', ...cards.map(({ system: of }, i) => [of, places[i + 1]].filter(Boolean).join(', '))],
      chosen: (value) => again({ card: value }),
    });
  }

  private goTo(row: number): void {
    if (this.log !== undefined) selectRow(this.sheet, this.log.sheet, this.log.range, row - 1);
  }
}

function placeOf({ sheet, range }: FoundLog): string {
  return `${sheet}, ${addressRange(range)}`;
}

const height = 360;
const [narrowest, widest] = [300, 760];

/** The room that the panel gives its plot. [px] */
function plotSize(): { readonly width: number; readonly height: number } {
  return { width: Math.min(widest, Math.max(narrowest, element('panel-figure').clientWidth)), height };
}
