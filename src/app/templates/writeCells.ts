import type { NewFile } from 'excelize-wasm';
import { addressOf, cellRange, formulaAsStored } from '../../sheet/index.js';
import { qtNames } from '../calls/outsideFunctions.js';
import type { BookStyles } from './bookStyles.js';
import { done } from './done.js';
import { styledRuns } from './styledRuns.js';
import type { SheetPlan } from './templatePlan.js';

/** Contents, looks and number formats of a sheet. Formulas go in as stored text; what they give is put in afterwards. */
export function writeCells(file: NewFile, plan: SheetPlan, styles: BookStyles): void {
  for (const { at, cells } of plan.blocks) {
    const { firstRow, firstColumn } = cellRange(at);
    cells.forEach((line, r) => {
      line.forEach((content, c) => {
        if (content !== null) writeCell(file, plan.name, addressOf(firstRow + r, firstColumn + c), content);
      });
    });
  }
  for (const { look, format, first, last } of styledRuns(plan)) {
    done(file.SetCellStyle(plan.name, first, last, styles.cell(look, format)), `${plan.name}!${first}`);
  }
  for (const range of plan.merged) {
    const [first = '', last = first] = range.split(':');
    done(file.MergeCell(plan.name, first, last), range);
  }
  for (const { at, to } of plan.links ?? []) {
    done(file.SetCellHyperLink(plan.name, at, `'${to}'!A1`, 'Location', { Tooltip: `to the sheet ${to}` }), at);
  }
}

function writeCell(file: NewFile, sheet: string, at: string, content: number | string): void {
  if (typeof content === 'string' && content.startsWith('=')) {
    done(file.SetCellFormula(sheet, at, formulaAsStored(content, qtNames)), `${sheet}!${at}`);
  } else if (typeof content === 'string') done(file.SetCellStr(sheet, at, content), `${sheet}!${at}`);
  else done(file.SetCellValue(sheet, at, content), `${sheet}!${at}`);
}
