import { cellRange } from '../../sheet/index.js';
import { textWidth } from '../plot/textWidth.js';
import { digitWidth } from './digitWidth.js';
import { letterSize } from './letterSize.js';
import type { SheetPlan } from './templatePlan.js';

/** Of a column and the indent of its texts. [px] */
const margins = 18;

/** The widths of a sheet, none of them narrower than a word of a heading. */
export function fittedWidths({ widths, looks }: SheetPlan, texts: ReadonlyMap<string, string>): number[] {
  const fitted = [...widths];
  for (const { range, look } of looks) {
    if (look !== 'heading' && look !== 'numberHeading') continue;
    const { firstRow, lastRow, firstColumn, lastColumn } = cellRange(range);
    for (let row = firstRow; row <= lastRow; row++) {
      for (let column = firstColumn; column <= lastColumn; column++) {
        const words = texts.get(`${row},${column}`)?.split(' ') ?? [];
        const needed = Math.max(0, ...words.map((word) => textWidth(word, letterSize(10)) + margins));
        fitted[column] = Math.max(fitted[column] ?? 0, needed / digitWidth);
      }
    }
  }
  return fitted;
}
