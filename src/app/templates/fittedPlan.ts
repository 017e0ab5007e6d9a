import { type CellAnswer, cellRange } from '../../sheet/index.js';
import { digitWidth } from './digitWidth.js';
import { fittedHeights } from './fittedHeights.js';
import { fittedWidths } from './fittedWidths.js';
import { sheetTexts } from './sheetTexts.js';
import type { SheetPlan, TemplatePlan } from './templatePlan.js';

/** Of the paper within its margins, along and across. [px] */
const [long, short] = [1000, 640];
const pixelsOfAPoint = 4 / 3;
/** A sheet that is longer than its page by no more than this share is made smaller instead. */
const mostSmaller = 1.3;

/** The plan with columns as wide as the words of their headings, and rows as tall as their texts, answers among them. */
export function fittedPlan(plan: TemplatePlan, answers: readonly CellAnswer[]): TemplatePlan {
  return { ...plan, sheets: plan.sheets.map((sheet) => fittedSheet(sheet, answers)) };
}

function fittedSheet(sheet: SheetPlan, answers: readonly CellAnswer[]): SheetPlan {
  const texts = sheetTexts(sheet, answers);
  const wide = { ...sheet, widths: fittedWidths(sheet, texts) };
  const heights = fittedHeights(wide, texts);
  const written = [...texts.keys()].map((place) => Number.parseInt(place, 10));
  const inputs = sheet.looks
    .filter(({ look }) => look.startsWith('input'))
    .map(({ range }) => cellRange(range).lastRow);
  const last = Math.max(...written, ...inputs);
  const filled = heights.filter(({ rows: [row] }) => row <= last + 1);
  const tall = filled.reduce((sum, { height }) => sum + height, 0) * pixelsOfAPoint;
  const width = wide.widths.reduce((sum, each) => sum + each, 0) * digitWidth;
  const [across, down] = sheet.page.orientation === 'landscape' ? [long, short] : [short, long];
  const onPage = down * Math.max(1, width / across);
  const page = tall > onPage && tall <= mostSmaller * onPage ? { ...sheet.page, onOnePage: true } : sheet.page;
  return { ...wide, heights, page };
}
