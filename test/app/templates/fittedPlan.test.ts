import { fittedPlan } from '../../../src/app/templates/fittedPlan.js';
import type { SheetPlan, TemplatePlan } from '../../../src/app/templates/templatePlan.js';

const long = 'one reading is set aside as void and stays in the log to be seen by whoever reads it later';
const sheet: SheetPlan = {
  name: 'Sheet',
  tab: 'answer',
  widths: [5, 20, 20],
  blocks: [
    { at: 'A1', cells: [['temperature', 'Why', null]] },
    { at: 'A2', cells: [[1, '=QT.CAUTIONS()', null]] },
    { at: 'A3', cells: [[2, long, long]] },
    { at: 'A4', cells: [[3, 'short', null]] },
  ],
  looks: [
    { range: 'A1:C1', look: 'heading' },
    { range: 'A2:A4', look: 'logNumber' },
    { range: 'B2:C4', look: 'spillText' },
  ],
  formats: [],
  merged: ['B3:C3'],
  page: { orientation: 'portrait' },
};
const planOf = (one: SheetPlan): TemplatePlan => ({
  title: '',
  subject: '',
  description: '',
  names: [],
  sheets: [one],
});
const fitted = (one: SheetPlan, value: string): SheetPlan => {
  const answer = { sheet: 'Sheet', row: 1, column: 1, formula: 'QT.CAUTIONS()', value };
  const [first] = fittedPlan(planOf(one), [answer]).sheets;
  if (first === undefined) throw new Error('no sheet');
  return first;
};
const heightsOf = ({ heights = [] }: SheetPlan): number[] => heights.map(({ height }) => height);

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
    const rows = (count: number): SheetPlan => ({
      ...sheet,
      blocks: [{ at: 'A1', cells: Array.from({ length: count }, () => [1, 'short', null]) }],
      looks: [{ range: `A1:C${count}`, look: 'log' }],
    });
    expect(fitted(rows(20), '').page.onOnePage).toBeUndefined();
    expect(fitted(rows(50), '').page.onOnePage).toBe(true);
    expect(fitted(rows(200), '').page.onOnePage).toBeUndefined();
  });
});
