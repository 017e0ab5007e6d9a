import type { NewFile } from 'excelize-wasm';
import { addressOf, addressRange, type CellRange } from '../../../sheet/index.js';
import type { SheetPlan, TemplatePlan } from '../plan/templatePlan.js';
import { BookStyles } from './bookStyles.js';
import { done } from './loadExcelize.js';
import type { Excelize } from './loadExcelize.js';
import { fontFamily } from '../plan/looks.js';
import { styledRuns } from './styledRuns.js';
import { writePage } from './writePage.js';
import { writeRules } from './writeRules.js';

/** A plan as an .xlsx file, still without formulas and with empty chart frames. */
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

/** The frame of each chart: place, size, name and text alternative. The drawing is put in afterwards. */
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

/** Contents, looks and number formats of a sheet. Formulas and their answers are put in afterwards. */
function writeCells(file: NewFile, plan: SheetPlan, styles: BookStyles): void {
  const { name } = plan;
  for (const { row, column, content } of plan.cells) {
    const [at, where] = [addressOf(row, column), `${name}!${addressOf(row, column)}`];
    if (typeof content === 'number') done(file.SetCellValue(name, at, content), where);
    else if (!content.startsWith('=')) done(file.SetCellStr(name, at, content), where);
  }
  for (const { look, format, range } of styledRuns(plan)) {
    const [first, last] = [addressOf(range.firstRow, range.firstColumn), addressOf(range.lastRow, range.lastColumn)];
    done(file.SetCellStyle(name, first, last, styles.cell(look, format)), `${name}!${first}`);
  }
  for (const range of plan.merged) {
    const [first = '', last = ''] = addressRange(range).split(':');
    done(file.MergeCell(name, first, last), `${name}!${first}`);
  }
  for (const { row, column, to } of plan.links) {
    const at = addressOf(row, column);
    done(file.SetCellHyperLink(name, at, `'${to}'!A1`, 'Location', { Tooltip: `to the sheet ${to}` }), at);
  }
}
