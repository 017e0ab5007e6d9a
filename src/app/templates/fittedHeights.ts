import { cellRange } from '../../sheet/index.js';
import { wrappedText } from '../plot/wrappedText.js';
import { digitWidth } from './digitWidth.js';
import { letterSize } from './letterSize.js';
import { lookStyle } from './lookStyle.js';
import { styledRuns } from './styledRuns.js';
import type { SheetPlan } from './templatePlan.js';

type Heights = NonNullable<SheetPlan['heights']>;

/** Of a row with one line, of the room above and below its text, and of a line by the size of its letters. [pt] */
const [oneLine, room, line] = [18, 6, 1.22];
/** Of a column and the indent of its texts. [px] */
const margins = 12;

/** The heights of all rows that have a look: one line, or as many as the longest of the row's wrapped texts needs. */
export function fittedHeights(sheet: SheetPlan, texts: ReadonlyMap<string, string>): Heights {
  const isMerged = placesIn(sheet.merged);
  const heights: number[] = [];
  for (const { look, first, last } of styledRuns(sheet)) {
    const { firstRow, firstColumn: column } = cellRange(first);
    const { Alignment, Font } = lookStyle[look];
    const size = Font?.Size ?? 10;
    const width = (sheet.widths[column] ?? 0) * digitWidth - margins;
    for (let row = firstRow; row <= cellRange(last).lastRow; row++) {
      const text = Alignment?.WrapText === true && !isMerged(row, column) ? texts.get(`${row},${column}`) : undefined;
      const lines = text === undefined ? 0 : wrappedText(text, letterSize(size), width).length;
      const needed = lines < 2 ? oneLine : Math.ceil(lines * size * line + room);
      heights[row] = Math.max(heights[row] ?? oneLine, needed);
    }
  }
  return heights.flatMap((height, row) => [{ rows: [row + 1, row + 1] as const, height }]);
}

function placesIn(ranges: readonly string[]): (row: number, column: number) => boolean {
  const all = ranges.map((range) => cellRange(range));
  return (row, column) =>
    all.some(
      ({ firstRow, lastRow, firstColumn, lastColumn }) =>
        firstRow <= row && row <= lastRow && firstColumn <= column && column <= lastColumn,
    );
}
