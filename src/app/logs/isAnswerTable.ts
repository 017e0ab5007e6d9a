import { type BookSheet, type CellRange, isInside } from '../../sheet/index.js';
import type { HeadedBlock } from './headedBlocks.js';
import { isBlankCell, writtenText } from './cellsAt.js';

/** How the QT tables that name a time and a level begin, for copies whose formulas are gone. */
const beginnings = ['When · Copper · Status · Hold day', 'When · Expected · Low · High · Reading'];
const lookedAtRows = 200;

/**
 * Whether a block is computed from a log and is not one itself: its readings are formulas, a number is computed among its
 * headings, or it is a pasted QT answer.
 */
export function isAnswerTable(sheet: BookSheet, block: HeadedBlock, filled: readonly CellRange[]): boolean {
  const headings: string[] = [];
  for (let column = block.firstColumn; column <= block.lastColumn; column++) {
    const cell = sheet.rows[block.headingRow]?.[column];
    if (cell?.formula !== undefined && typeof cell.value === 'number') return true;
    headings.push(writtenText(sheet, block.headingRow, column));
  }
  const joined = headings.join(' · ');
  return beginnings.some((beginning) => joined.startsWith(beginning)) || isComputed(sheet, block, filled);
}

/** A keeper may compute times, or readings from what the meter showed, but not both. */
function isComputed(
  sheet: BookSheet,
  { headingRow, time, copper }: HeadedBlock,
  filled: readonly CellRange[],
): boolean {
  const seen = { readings: 0, filled: 0, formulas: 0, times: 0 };
  const last = Math.min(sheet.rows.length - 1, headingRow + lookedAtRows);
  for (let row = headingRow + 1; row <= last; row++) {
    const isFilled = (column: number): boolean => filled.some((range) => isInside(range, row, column));
    const isFormula = (column: number): boolean => sheet.rows[row]?.[column]?.formula !== undefined || isFilled(column);
    if (!isBlankCell(sheet, row, time) && !isFormula(time)) seen.times++;
    if (isBlankCell(sheet, row, copper) && !isFormula(copper)) continue;
    seen.readings++;
    if (isFilled(copper)) seen.filled++;
    if (isFormula(copper)) seen.formulas++;
  }
  const { readings, formulas, times } = seen;
  return readings > 0 && (seen.filled === readings || (formulas === readings && times === 0));
}
