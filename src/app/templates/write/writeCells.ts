import type { NewFile } from 'excelize-wasm';
import { addressOf, addressRange } from '../../../sheet/index.js';
import type { BookStyles } from './bookStyles.js';
import { done } from './done.js';
import { styledRuns } from './styledRuns.js';
import type { SheetPlan } from '../plan/templatePlan.js';

/** What is written in a sheet, looks and number formats. Formulas and their answers are put in afterwards. */
export function writeCells(file: NewFile, plan: SheetPlan, styles: BookStyles): void {
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
