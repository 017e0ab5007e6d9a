import { type Book, type BookSheet, isInside } from '../../../sheet/index.js';
import { textWidth } from '../../plot/textWidth.js';
import type { SheetPlan, TemplatePlan } from '../plan/templatePlan.js';
import { wrappedText } from '../../plot/textWidth.js';
import { looks } from '../plan/looks.js';
import { styledRuns } from './styledRuns.js';

/** Of the paper within its margins, along and across. [px] */
const [long, short] = [1000, 640];
const pixelsOfAPoint = 4 / 3;
/** A sheet that is longer than its page by no more than this share is made smaller instead. */
const mostSmaller = 1.3;
/** Of a column and the indent of its heading. [px] */
const headingMargins = 18;

/** What a cell shows as text, `''` for a number; undefined: nothing. Rows and columns count from 0. */
type TextAt = (row: number, column: number) => string | undefined;

/** The plan with columns as wide as the words of their headings, and rows as tall as their texts, answers among them. */
export function fittedPlan(plan: TemplatePlan, answered: Book): TemplatePlan {
  return { ...plan, sheets: plan.sheets.map((sheet, i) => fittedSheet(sheet, answered.sheets[i]?.rows ?? [])) };
}

function fittedSheet(sheet: SheetPlan, rows: BookSheet['rows']): SheetPlan {
  const textAt: TextAt = (row, column) => {
    const value = rows[row]?.[column]?.value;
    return value === undefined || value === null ? undefined : typeof value === 'string' ? value : '';
  };
  const wide = { ...sheet, widths: fittedWidths(sheet, textAt) };
  const heights = fittedHeights(wide, textAt);
  const written = rows.flatMap((cells, row) =>
    cells?.some((_, column) => textAt(row, column) !== undefined) === true ? [row] : [],
  );
  const inputs = sheet.areas.filter(({ look }) => look?.startsWith('input') === true).map(({ range }) => range.lastRow);
  const last = Math.max(...written, ...inputs);
  const tall =
    heights.filter(({ first }) => first <= last).reduce((sum, { height }) => sum + height, 0) * pixelsOfAPoint;
  const width = wide.widths.reduce((sum, each) => sum + each, 0) * digitWidth;
  const [across, down] = sheet.page.orientation === 'landscape' ? [long, short] : [short, long];
  const onPage = down * Math.max(1, width / across);
  const page = tall > onPage && tall <= mostSmaller * onPage ? { ...sheet.page, onOnePage: true } : sheet.page;
  return { ...wide, heights, page };
}

/** None narrower than a word of a heading. */
function fittedWidths({ widths, areas }: SheetPlan, textAt: TextAt): number[] {
  const fitted = [...widths];
  for (const { range, look } of areas) {
    if (look !== 'heading' && look !== 'numberHeading') continue;
    for (let row = range.firstRow; row <= range.lastRow; row++) {
      for (let column = range.firstColumn; column <= range.lastColumn; column++) {
        const words = textAt(row, column)?.split(' ') ?? [];
        const needed = Math.max(0, ...words.map((word) => textWidth(word, letterSize(10)) + headingMargins));
        fitted[column] = Math.max(fitted[column] ?? 0, needed / digitWidth);
      }
    }
  }
  return fitted;
}

/** Of the widest digit of a new workbook's usual letters, in which widths of columns count. [px] */
const digitWidth = 8;

/** Of a row with one line, of the room above and below its text, and of a line by the size of its letters. [pt] */
const [oneLine, room, lineOfSize] = [18, 6, 1.22];
/** Of a column and the indent of its texts. [px] */
const textMargins = 12;

/** The letters of the templates are narrower than the widest ones that plots allow for. */
const narrower = 0.87;

/** The letter size at which a plot's estimate of width fits the letters of the templates. [px] */
function letterSize(points: number): number {
  return points * pixelsOfAPoint * narrower;
}

/** The heights of all rows that have a look: one line, or as many as the longest of the row's wrapped texts needs. */
function fittedHeights(
  sheet: SheetPlan,
  textAt: (row: number, column: number) => string | undefined,
): SheetPlan['heights'] {
  const isMerged = (row: number, column: number): boolean => sheet.merged.some((range) => isInside(range, row, column));
  const heights: number[] = [];
  for (const { look, range } of styledRuns(sheet)) {
    const column = range.firstColumn;
    const { Alignment, Font } = looks[look];
    const size = Font?.Size ?? 10;
    const width = (sheet.widths[column] ?? 0) * digitWidth - textMargins;
    for (let row = range.firstRow; row <= range.lastRow; row++) {
      const text = Alignment?.WrapText === true && !isMerged(row, column) ? textAt(row, column) : undefined;
      const lines = text === undefined ? 0 : wrappedText(text, letterSize(size), width).length;
      const needed = lines < 2 ? oneLine : Math.ceil(lines * size * lineOfSize + room);
      heights[row] = Math.max(heights[row] ?? oneLine, needed);
    }
  }
  return heights.flatMap((height, row) => [{ first: row, last: row, height }]);
}
