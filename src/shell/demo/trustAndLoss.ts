import { logColumns } from './keeperLog.js';
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

const meters = [0.05, 0.1, 0.2, 0.3];
const firstMeter = 11;
const chance = (accuracy: string, drift: string): string =>
  `=QT.HOLDCHANCE(${logColumns('Log!')},$B$4,${accuracy},$B$6,${drift})`;

/** What a meter can show, how likely the hold is whole, and how fast copper goes where it should not. */
export const trustAndLoss: SheetPlan = {
  name: 'Trust and loss',
  widths: [262, 104, 104, 22, 124, 124, 124, 124, 124, 250],
  rows: 60,
  frozenRows: 1,
  blocks: [
    {
      at: 'A1',
      cells: [['How far to trust it, and where the copper goes: fill in the blue cells, the answers are in bold']],
    },
    {
      at: 'A3',
      cells: [
        ['1  The meter', null, null],
        ['Copper in the tank', 'chelated', null],
        ['Good to ±', 0.1, 'mg/L'],
        ['and this much of the reading', 0.05, null],
        ['Reads from', 0, 'mg/L'],
        ['to', 5, 'mg/L'],
        ['Reading to keep', '=QT.AIM(B4,B5,B6)', 'mg/L'],
      ],
    },
    { at: 'E3', cells: [['What it can show of the band']] },
    { at: 'E4', cells: [['=QT.METERFITS(B4,B7,B8,B5,B6)']] },
    {
      at: 'A11',
      cells: [
        ['2  The hold of tank Q2, from the sheet Log', null, null],
        ['Held without a break', `=QT.HOLDDAYS(${logColumns('Log!')},B4)`, 'days'],
        ['Chance that it never was below the band', `=QT.HOLDCHANCE(${logColumns('Log!')},B4,B5,B6)`, null],
        ['A chance, not a promise: it knows chance errors only, not a meter that is always wrong the same way.'],
      ],
    },
    { at: 'E8', cells: [['The same hold with a better or a worse meter, and a level that wanders more']] },
    {
      at: 'E9',
      cells: [
        ['Meter good to ±', 'Reading to keep', 'Chance, if the level wanders in a day by, mg/L', null, null],
        ['mg/L', 'mg/L', 0.02, 0.05, 0.1],
        ...meters.map((accuracy, i) => {
          const row = firstMeter + i;
          return [
            accuracy,
            `=QT.AIM($B$4,E${row},$B$6)`,
            ...['G$10', 'H$10', 'I$10'].map((drift) => chance(`$E${row}`, drift)),
          ];
        }),
      ],
    },
    {
      at: 'A17',
      cells: [
        ['3  A second meter: it reads from 0.21', null, null],
        ['Band of copper sulfate, low and high', 0.15, 0.2],
        ['Good to ±', 0.02, 'mg/L'],
        ['Reads from', 0.21, 'mg/L'],
        ['to', 5, 'mg/L'],
      ],
    },
    { at: 'E17', cells: [['What it can show of the band']] },
    { at: 'E18', cells: [['=QT.METERFITS(B18:C18,B20,B21,B19)']] },
    {
      at: 'E20',
      cells: [['Inside this band it reads nothing: no hold can be shown with it. Take a test with a lower range.']],
    },
    { at: 'A24', cells: [['4  Bench test: does this filter ceramic take up copper?']] },
    { at: 'A25', cells: [['10 L buckets, nothing added', 'With it, mg/L', 'Without, mg/L'], ...buckets] },
    { at: 'E24', cells: [['Loss in the bucket with the ceramic, with its 95 % interval']] },
    { at: 'E25', cells: [['=QT.LOSSRATE(A26:A33,B26:B33)']] },
    { at: 'E28', cells: [['Loss in the bucket without']] },
    { at: 'E29', cells: [['=QT.LOSSRATE(A26:A33,C26:C33)']] },
    {
      at: 'E32',
      cells: [
        ['It absorbs: none of it goes into a copper tank. The other bucket shows that the test itself is steady.'],
      ],
    },
    { at: 'A36', cells: [['5  Tank Q3: the level keeps falling']] },
    { at: 'A37', cells: [['Tested', 'Copper, mg/L', 'Added, mg/L'], ...dosed] },
    { at: 'E36', cells: [['Loss a day, the doses taken out']] },
    { at: 'E37', cells: [['=QT.LOSSRATE(A38:A47,B38:B47,C38:C47)']] },
    {
      at: 'E40',
      cells: [
        ['Added is the rise by the doses since the reading before, as QT.RISE gives it.'],
        ['Chelated copper usually loses up to 0.5 % a day (common practice); this tank loses seven times that.'],
        ['Found on 15 April: a bag of carbon, forgotten in the filter.'],
      ],
    },
  ],
  looks: [
    { range: 'A1:J1', look: 'title' },
    ...[
      'A3:C3',
      'E3:J3',
      'A11:C11',
      'E8:J8',
      'A17:C17',
      'E17:J17',
      'A24:C24',
      'E24:J24',
      'E28:J28',
      'A36:C36',
      'E36:J36',
    ].map((range) => ({ range, look: 'section' as const })),
    ...['A4:A9', 'A12:A13', 'A18:A21'].map((range) => ({ range, look: 'label' as const })),
    { range: 'C4:C21', look: 'unit' },
    ...['B4:B8', 'B18:C18', 'B19:B21', 'A26:C33', 'A38:C47', 'E11:E14', 'G10:I10'].map((range) => ({
      range,
      look: 'input' as const,
    })),
    ...['B9', 'B12:B13', 'F11:I14'].map((range) => ({ range, look: 'answer' as const })),
    { range: 'A14:C15', look: 'caption' },
    { range: 'E4:F4', look: 'heading' },
    { range: 'G4', look: 'numberHeading' },
    { range: 'H4:J4', look: 'heading' },
    { range: 'E5:J5', look: 'spill' },
    { range: 'E9:F10', look: 'numberHeading' },
    { range: 'G9:I9', look: 'heading' },
    { range: 'E18:F18', look: 'heading' },
    { range: 'G18', look: 'numberHeading' },
    { range: 'H18:J18', look: 'heading' },
    { range: 'E19:J19', look: 'spill' },
    { range: 'E20', look: 'note' },
    ...[25, 29, 37].flatMap((row) => [
      { range: `E${row}:H${row}`, look: 'numberHeading' as const },
      { range: `I${row}`, look: 'heading' as const },
      { range: `E${row + 1}:I${row + 1}`, look: 'spill' as const },
    ]),
    { range: 'E32', look: 'note' },
    { range: 'E40:E42', look: 'note' },
    ...[25, 37].map((row) => ({ range: `A${row}:C${row}`, look: 'numberHeading' as const })),
  ],
  formats: [
    { range: 'B5', format: '0.00' },
    { range: 'B6', format: '0%' },
    { range: 'B7:B8', format: '0.00' },
    { range: 'B9', format: '0.000' },
    { range: 'G5', format: '0.000' },
    { range: 'B12', format: '0.00' },
    { range: 'B13', format: '[>=0.995]"over 99%";0%' },
    { range: 'E11:E14', format: '0.00' },
    { range: 'F11:F14', format: '0.000' },
    { range: 'G10:I10', format: '0.00' },
    { range: 'G11:I14', format: '[>=0.995]"over 99%";0%' },
    { range: 'B18:C18', format: '0.00' },
    { range: 'B19:B21', format: '0.00' },
    { range: 'G19', format: '0.000' },
    ...[26, 38].map((row) => ({ range: `A${row}:A${row + 9}`, format: 'yyyy-mm-dd hh:mm' as const })),
    { range: 'B26:C33', format: '0.00' },
    { range: 'B38:C47', format: '0.00' },
    ...[26, 30, 38].flatMap((row) => [
      { range: `E${row}:G${row}`, format: '0.00' as const },
      { range: `H${row}`, format: '0.000' as const },
    ]),
  ],
  merged: ['A14:C15', 'G9:I9'],
};
