import type { NewFile } from 'excelize-wasm';
import { addressOf, addressRange, type CellRange } from '../../../sheet/index.js';
import type { SheetPlan, TemplatePlan } from '../plan/templatePlan.js';
import { BookStyles } from './bookStyles.js';
import { done } from './done.js';
import type { Excelize } from './loadExcelize.js';
import { fontFamily } from './lookStyle.js';
import { writeCells } from './writeCells.js';
import { writePage } from './writePage.js';
import { writeRules } from './writeRules.js';

/** A plan as an .xlsx file without its formulas, and with no more of its charts than their frames. */
export function writtenBook(plan: TemplatePlan, excelize: Excelize): Uint8Array {
  const file = excelize.NewFile();
  done(file.SetDefaultFont(fontFamily), 'font');
  const [first] = plan.sheets;
  if (first === undefined) throw new Error('a plan without sheets');
  done(file.SetSheetName('Sheet1', first.name), first.name);
  for (const { name } of plan.sheets.slice(1)) done(file.NewSheet(name), name);
  const styles = new BookStyles(file);
  for (const sheet of plan.sheets) writeSheet(file, sheet, styles, plan.title);
  for (const { name, cells, comment } of plan.names)
    done(file.SetDefinedName({ Name: name, RefersTo: cells, Comment: comment }), name);
  // A chart's cells must be there before it is drawn.
  for (const sheet of plan.sheets) writeChartFrames(file, sheet, excelize);
  done(file.SetActiveSheet(0), first.name);
  done(file.SetAppProps({ Application: 'Lazaret' }), 'properties');
  const { buffer, error } = file.WriteToBuffer();
  if (error !== null || !(buffer instanceof Uint8Array)) throw new Error(`the workbook was not written: ${error}`);
  return buffer;
}

function writeSheet(file: NewFile, sheet: SheetPlan, styles: BookStyles, title: string): void {
  writeCells(file, sheet, styles);
  if (sheet.table !== undefined) {
    const { name, range } = sheet.table;
    done(file.AddTable(sheet.name, { Range: addressRange(range), Name: name, ShowRowStripes: false }), name);
  }
  writeRules(file, sheet, styles);
  writePage(file, sheet, title);
  const last: Pick<CellRange, 'lastRow' | 'lastColumn'> = {
    lastRow: Math.max(...sheet.areas.map(({ range }) => range.lastRow)),
    lastColumn: sheet.widths.length - 1,
  };
  done(file.SetSheetDimension(sheet.name, addressRange({ firstRow: 0, firstColumn: 0, ...last })), sheet.name);
}

/** The frame of each chart in its sheet: place, size, name and text alternative. What is drawn in it is put in afterwards. */
function writeChartFrames(file: NewFile, { name, charts }: SheetPlan, excelize: Excelize): void {
  for (const chart of charts) {
    const at = addressOf(chart.at.row, chart.at.column);
    const frame = {
      Type: chart.kind === 'scatter' ? excelize.Scatter : excelize.Col,
      Series: chart.series.map(({ across, up }) => ({ Categories: across, Values: up })),
      Format: { AltText: chart.alt, Name: chart.name },
      Dimension: { Width: chart.size.width, Height: chart.size.height },
    };
    done(file.AddChart(name, at, frame), `${name}!${at}`);
  }
}
