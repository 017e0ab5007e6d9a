import { isInside } from '../../../sheet/index.js';
import { wrappedText } from '../../plot/wrappedText.js';
import type { SheetPlan } from '../plan/templatePlan.js';
import { lookStyle } from './lookStyle.js';
import { styledRuns } from './styledRuns.js';

/** Of the widest digit of a new workbook's usual letters, in which widths of columns count. [px] */
export const digitWidth = 8;

/** Of a row with one line, of the room above and below its text, and of a line by the size of its letters. [pt] */
const [oneLine, room, lineOfSize] = [18, 6, 1.22];
/** Of a column and the indent of its texts. [px] */
const margins = 12;

/** The letters of the templates are narrower than the widest that plots reckon with. */
const narrower = 0.87;
const pixelsOfAPoint = 4 / 3;

/** The size of letters that come out as wide by the reckoning of plots as those of the templates. [px] */
export function letterSize(points: number): number {
  return points * pixelsOfAPoint * narrower;
}

/** The heights of all rows that have a look: one line, or as many as the longest of the row's wrapped texts needs. */
export function fittedHeights(
  sheet: SheetPlan,
  textAt: (row: number, column: number) => string | undefined,
): SheetPlan['heights'] {
  const isMerged = (row: number, column: number): boolean => sheet.merged.some((range) => isInside(range, row, column));
  const heights: number[] = [];
  for (const { look, range } of styledRuns(sheet)) {
    const column = range.firstColumn;
    const { Alignment, Font } = lookStyle[look];
    const size = Font?.Size ?? 10;
    const width = (sheet.widths[column] ?? 0) * digitWidth - margins;
    for (let row = range.firstRow; row <= range.lastRow; row++) {
      const text = Alignment?.WrapText === true && !isMerged(row, column) ? textAt(row, column) : undefined;
      const lines = text === undefined ? 0 : wrappedText(text, letterSize(size), width).length;
      const needed = lines < 2 ? oneLine : Math.ceil(lines * size * lineOfSize + room);
      heights[row] = Math.max(heights[row] ?? oneLine, needed);
    }
  }
  return heights.flatMap((height, row) => [{ first: row, last: row, height }]);
}
