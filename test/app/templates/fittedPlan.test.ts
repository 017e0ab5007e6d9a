import { fittedPlan } from '../../../src/app/templates/write/fittedPlan.js';
import { answeredBook, planBook } from '../../../src/app/templates/plan/planBook.js';
import { rows } from '../../../src/app/templates/plan/line.js';
import { sheetPlan } from '../../../src/app/templates/plan/sheetPlan.js';
import type { Content, Part, SheetPlan, TemplatePlan } from '../../../src/app/templates/plan/templatePlan.js';

const long = 'one reading is set aside as void and stays in the log to be seen by whoever reads it later';
const sheetOf = (...parts: readonly Part[]): SheetPlan =>
  sheetPlan({ name: 'Sheet', tab: 'answer', widths: [5, 20, 20], page: { orientation: 'portrait' }, parts });
const sheet = sheetOf(
  rows({ at: 'A1', cells: [['temperature', 'Why']], looks: ['heading', 'heading', 'heading'] }),
  rows({
    at: 'A2',
    cells: [
      [1, '=QT.CAUTIONS()', null],
      [2, long, long],
      [3, 'short', null],
    ],
    looks: ['cellNumber', 'smallText', 'smallText'],
  }),
  { merged: [{ firstRow: 2, lastRow: 2, firstColumn: 1, lastColumn: 2 }] },
);
const planOf = (one: SheetPlan): TemplatePlan => ({
  title: '',
  subject: '',
  description: '',
  names: [],
  sheets: [one],
});
const fitted = (one: SheetPlan, value: string): SheetPlan => {
  const plan = planOf(one);
  const answer = { sheet: 'Sheet', row: 1, column: 1, formula: 'QT.CAUTIONS()', value };
  const [first] = fittedPlan(plan, answeredBook(planBook(plan), [answer], plan)).sheets;
  if (first === undefined) throw new Error('no sheet');
  return first;
};
const heightsOf = ({ heights }: SheetPlan): number[] => heights.map(({ height }) => height);

describe('fittedPlan', () => {
  it('makes a row as tall as the answer in it needs, and no taller for a merged cell', () => {
    expect(heightsOf(fitted(sheet, 'short'))).toEqual([18, 18, 18, 18]);
    const [heading, answered, merged, last] = heightsOf(fitted(sheet, long));
    expect([heading, merged, last]).toEqual([18, 18, 18]);
    expect(answered).toBeGreaterThan(3 * 9);
    expect(answered).toBeLessThan(8 * 9 * 1.3);
    const [, taller] = heightsOf(fitted(sheet, `${long} ${long}`));
    expect(taller).toBeGreaterThan(1.5 * (answered ?? NaN));
  });

  it('makes a column as wide as the longest word of its heading, and leaves the others', () => {
    const { widths } = fitted(sheet, long);
    expect(widths[0]).toBeGreaterThan('temperature'.length);
    expect(widths.slice(1)).toEqual([20, 20]);
  });

  it('puts a sheet on one page that is a little longer than one, not one that is much longer', () => {
    const lines = (count: number): SheetPlan =>
      sheetOf(
        rows({
          at: 'A1',
          cells: Array.from({ length: count }, (): Content[] => [1, 'short', null]),
          looks: ['cell', 'cell', 'cell'],
        }),
      );
    expect(fitted(lines(20), '').page.onOnePage).toBeUndefined();
    expect(fitted(lines(50), '').page.onOnePage).toBe(true);
    expect(fitted(lines(200), '').page.onOnePage).toBeUndefined();
  });
});
