import { serialOf } from './serialOf.js';
import type { PlanCell, SheetPlan } from './sheetPlan.js';

/** The bench test of filter ceramic: the bucket with it, and one without to compare. */
const buckets: readonly PlanCell[][] = [
  [serialOf('2026-02-14 10:00'), 2.4, 2.4],
  [serialOf('2026-02-15 10:00'), 2.33, 2.4],
  [serialOf('2026-02-16 10:00'), 2.27, 2.38],
  [serialOf('2026-02-17 10:00'), 2.19, 2.41],
  [serialOf('2026-02-18 10:00'), 2.14, 2.39],
  [serialOf('2026-02-19 10:00'), 2.07, 2.4],
  [serialOf('2026-02-20 10:00'), 2.01, 2.38],
  [serialOf('2026-02-21 10:00'), 1.96, 2.39],
];

/** Tank Q3 with its doses, each as the rise it gave. */
const dosed: readonly PlanCell[][] = [
  [serialOf('2026-04-06 08:00'), 2.3, null],
  [serialOf('2026-04-07 08:00'), 2.22, null],
  [serialOf('2026-04-08 08:10'), 2.13, null],
  [serialOf('2026-04-09 08:00'), 2.3, 0.25],
  [serialOf('2026-04-10 08:00'), 2.22, null],
  [serialOf('2026-04-11 09:00'), 2.15, null],
  [serialOf('2026-04-12 08:30'), 2.28, 0.2],
  [serialOf('2026-04-13 08:00'), 2.2, null],
  [serialOf('2026-04-14 08:00'), 2.11, null],
  [serialOf('2026-04-15 08:00'), 2.3, 0.25],
];

/** How fast copper goes where it should not. */
export const loss: SheetPlan = {
  name: 'Loss',
  widths: [262, 104, 104, 22, 124, 124, 124, 124, 124, 250],
  rows: 50,
  frozenRows: 1,
  blocks: [
    {
      at: 'A1',
      cells: [['Where the copper goes: copper lost a day, as a share of the level, with its 95 % interval']],
    },
    { at: 'A3', cells: [['1  Bench test: does this filter ceramic take up copper?']] },
    { at: 'A4', cells: [['10 L buckets, nothing added', 'With it, mg/L', 'Without, mg/L'], ...buckets] },
    { at: 'E3', cells: [['The bucket with the ceramic']] },
    { at: 'E4', cells: [['=QT.LOSSRATE(A5:A12,B5:B12)']] },
    { at: 'E7', cells: [['The other bucket, without it']] },
    { at: 'E8', cells: [['=QT.LOSSRATE(A5:A12,C5:C12)']] },
    {
      at: 'E11',
      cells: [
        ['It absorbs: none of it goes into a copper tank. The other bucket shows that the test itself is steady.'],
      ],
    },
    { at: 'A15', cells: [['2  Tank Q3: the level keeps falling']] },
    { at: 'A16', cells: [['Tested', 'Copper, mg/L', 'Added, mg/L'], ...dosed] },
    { at: 'E15', cells: [['The tank, its doses taken out']] },
    { at: 'E16', cells: [['=QT.LOSSRATE(A17:A26,B17:B26,C17:C26)']] },
    {
      at: 'E19',
      cells: [
        ['Added is the rise by the doses since the reading before, as QT.RISE gives it.'],
        ['Chelated copper usually loses up to 0.5 % a day (common practice); this tank loses seven times that.'],
        ['Found on 15 April: a bag of carbon, forgotten in the filter.'],
      ],
    },
  ],
  looks: [
    { range: 'A1:J1', look: 'title' },
    ...['A3:C3', 'E3:J3', 'E7:J7', 'A15:C15', 'E15:J15'].map((range) => ({ range, look: 'section' as const })),
    ...['A4:C4', 'A16:C16'].map((range) => ({ range, look: 'numberHeading' as const })),
    ...['A5:C12', 'A17:C26'].map((range) => ({ range, look: 'input' as const })),
    ...[4, 8, 16].flatMap((row) => [
      { range: `E${row}:H${row}`, look: 'numberHeading' as const },
      { range: `I${row}`, look: 'heading' as const },
      { range: `E${row + 1}:I${row + 1}`, look: 'spill' as const },
    ]),
    { range: 'E11', look: 'note' },
    { range: 'E19:E21', look: 'note' },
  ],
  formats: [
    ...['A5:A12', 'A17:A26'].map((range) => ({ range, format: 'yyyy-mm-dd hh:mm' as const })),
    ...['B5:C12', 'B17:C26'].map((range) => ({ range, format: '0.00' as const })),
    ...[5, 9, 17].flatMap((row) => [
      { range: `E${row}:G${row}`, format: '0.00' as const },
      { range: `H${row}`, format: '0.000' as const },
    ]),
  ],
  merged: [],
};
