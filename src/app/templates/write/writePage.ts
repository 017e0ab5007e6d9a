import type { NewFile } from 'excelize-wasm';
import { addressOf, addressRange } from '../../../sheet/index.js';
import { done } from './loadExcelize.js';
import { fontFamily, tabs } from '../plan/looks.js';
import type { SheetPlan } from '../plan/templatePlan.js';

const a4 = 9;
const margins = { Left: 0.4, Right: 0.4, Top: 0.65, Bottom: 0.65, Header: 0.3, Footer: 0.3, Horizontally: true };
const points = (pages: string): string => `&"${fontFamily},Regular"&8${pages}`;

/** Widths, heights, what stays in view, and how a sheet prints. */
export function writePage(file: NewFile, plan: SheetPlan, title: string): void {
  const { name, page } = plan;
  plan.widths.forEach((width, column) => {
    const letters = addressOf(0, column).replace(/\d+$/, '');
    done(file.SetColWidth(name, letters, letters, width), name);
  });
  for (const { first, last, height } of plan.heights)
    for (let row = first; row <= last; row++) done(file.SetRowHeight(name, row + 1, height), name);
  done(file.SetSheetView(name, 0, { ShowGridLines: false, ZoomScale: 100, View: 'normal', TopLeftCell: 'A1' }), name);
  done(file.SetSheetProps(name, { FitToPage: true, TabColorRGB: `FF${tabs[plan.tab]}` }), name);
  if (plan.frozen !== undefined) freeze(file, name, plan.frozen);
  done(
    file.SetPageLayout(name, {
      Size: a4,
      Orientation: page.orientation,
      FitToWidth: 1,
      FitToHeight: page.onOnePage === true ? 1 : 0,
    }),
    name,
  );
  done(file.SetPageMargins(name, margins), name);
  done(file.SetHeaderFooter(name, headerAndFooter(title)), name);
  const sheet = `'${name}'!`;
  if (page.area !== undefined) {
    const area = addressRange(page.area).replace(/([A-Z]+)(\d+)/g, '$$$1$$$2');
    defineLocal(file, name, '_xlnm.Print_Area', sheet + area);
  }
  if (page.repeated !== undefined) {
    defineLocal(file, name, '_xlnm.Print_Titles', `${sheet}$${page.repeated.first + 1}:$${page.repeated.last + 1}`);
  }
}

function headerAndFooter(title: string): { OddHeader: string; OddFooter: string } {
  return {
    OddHeader: `&L${points(title)}&R${points('&A')}`,
    OddFooter: `&L${points('Copper is a poison; an aquatic veterinarian decides')}&R${points('Page &P of &N')}`,
  };
}

function defineLocal(file: NewFile, sheet: string, name: string, refersTo: string): void {
  done(file.SetDefinedName({ Name: name, RefersTo: refersTo, Scope: sheet }), `${sheet} ${name}`);
}

function freeze(file: NewFile, sheet: string, { rows, columns = 0 }: { rows: number; columns?: number }): void {
  const corner = addressOf(rows, columns);
  const pane = columns > 0 ? 'bottomRight' : 'bottomLeft';
  const panes = { Freeze: true, XSplit: columns, YSplit: rows, TopLeftCell: corner, ActivePane: pane };
  done(file.SetPanes(sheet, { ...panes, Selection: [{ SQRef: corner, ActiveCell: corner, Pane: pane }] }), sheet);
}
