import type { Block, PlanCell } from '../demo/sheetPlan.js';
import type { Condition, SheetPlan } from '../templatePlan.js';

/** Rows made ready for what is to do. */
const room = 8;

interface DoNowRows {
  readonly blocks: readonly Block[];
  readonly looks: SheetPlan['looks'];
  readonly formats: SheetPlan['formats'];
  readonly heights: NonNullable<SheetPlan['heights']>;
  readonly conditions: readonly Condition[];
  readonly last: number;
}

/** What to do, spilled by one formula into A to E below a heading; F says in a word whether its time has come. */
export function doNowRows(formula: string, heading: number): DoNowRows {
  const [first, last] = [heading + 1, heading + room];
  const due = (row: number): string =>
    `=IF(ISNUMBER(D${row}),IF(D${row}<AsOf-1/1440,"overdue",IF(D${row}<=AsOf+1/1440,"now","later")),"")`;
  return {
    blocks: [
      { at: `A${heading - 1}`, cells: [['What to do']] },
      { at: `A${heading}`, cells: [[formula]] },
      { at: `F${heading}`, cells: [['Due']] },
      { at: `F${first}`, cells: Array.from({ length: room }, (_, i): PlanCell[] => [due(first + i)]) },
    ],
    looks: [
      { range: `A${heading - 1}:F${heading - 1}`, look: 'section' },
      { range: `A${heading}:F${heading}`, look: 'heading' },
      { range: `B${heading}`, look: 'numberHeading' },
      { range: `A${first}:F${last}`, look: 'spill' },
      { range: `A${first}:A${last}`, look: 'spillName' },
      { range: `B${first}:B${last}`, look: 'spillNumber' },
      { range: `E${first}:E${last}`, look: 'spillText' },
    ],
    formats: [
      { range: `B${first}:B${last}`, format: '0.0' },
      { range: `D${first}:D${last}`, format: 'yyyy-mm-dd hh:mm' },
    ],
    heights: [{ rows: [first, last], height: 24 }],
    conditions: [
      {
        range: `F${first}:F${last}`,
        rules: [
          { when: `$F${first}="now"`, tone: 'due' },
          { when: `$F${first}="overdue"`, tone: 'overdue' },
        ],
      },
      { range: `A${first}:F${last}`, rules: [{ when: `$A${first}<>""`, tone: 'row' }] },
    ],
    last,
  };
}
