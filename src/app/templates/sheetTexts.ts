import { type CellAnswer, cellRange } from '../../sheet/index.js';
import type { SheetPlan } from './templatePlan.js';

/** What stands in a sheet by `row,column`, as written and as answered: its text, `''` for a number. */
export function sheetTexts({ name, blocks }: SheetPlan, answers: readonly CellAnswer[]): Map<string, string> {
  const texts = new Map<string, string>();
  for (const { at, cells } of blocks) {
    const { firstRow, firstColumn } = cellRange(at);
    cells.forEach((row, r) =>
      row.forEach((cell, c) => {
        if (cell !== null) texts.set(`${firstRow + r},${firstColumn + c}`, typeof cell === 'string' ? cell : '');
      }),
    );
  }
  for (const { sheet, row, column, value } of answers)
    if (sheet === name && value !== null) texts.set(`${row},${column}`, typeof value === 'string' ? value : '');
  return texts;
}
