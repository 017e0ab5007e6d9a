import type { NewFile } from 'excelize-wasm';
import { addressOf, cellRange } from '../../sheet/index.js';
import { BookStyles } from './bookStyles.js';
import { done } from './done.js';
import type { Excelize } from './loadExcelize.js';
import { fontFamily } from './lookStyle.js';
import type { SheetPlan, TemplatePlan } from './templatePlan.js';
import { writeCells } from './writeCells.js';
import { writeChartFrames } from './writeChartFrames.js';
import { writePage } from './writePage.js';
import { writeRules } from './writeRules.js';

/** A plan as an .xlsx file whose formulas have no answers yet, and whose charts only their frames. */
export function writtenPlan(plan: TemplatePlan, excelize: Excelize): Uint8Array {
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
    done(file.AddTable(sheet.name, { Range: range, Name: name, ShowRowStripes: false }), name);
  }
  writeRules(file, sheet, styles);
  writePage(file, sheet, title);
  const rows = sheet.looks.map(({ range }) => cellRange(range).lastRow);
  const dimension = `A1:${addressOf(Math.max(...rows), sheet.widths.length - 1)}`;
  done(file.SetSheetDimension(sheet.name, dimension), sheet.name);
}
