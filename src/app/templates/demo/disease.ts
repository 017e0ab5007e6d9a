import type { SheetPlan } from './sheetPlan.js';

/** What copper does to a disease and what it does not. */
export const disease: SheetPlan = {
  name: 'Disease',
  widths: [168, 276, 296, 312, 318],
  rows: 60,
  frozenRows: 1,
  blocks: [
    { at: 'A1', cells: [['What copper treats and what it does not: write another disease into a blue cell']] },
    {
      at: 'A2',
      cells: [
        [
          'Known, among others: white spot, velvet, Brooklynella, Uronema, flukes, bacteria, internal worms, unknown. An aquatic veterinarian decides.',
        ],
      ],
    },
    { at: 'A4', cells: [['Disease', 'white spot']] },
    { at: 'A5', cells: [['=QT.TREATMENTFOR(B4)']] },
    { at: 'A14', cells: [['Disease', 'flukes']] },
    { at: 'A15', cells: [['=QT.TREATMENTFOR(B14)']] },
  ],
  looks: [
    { range: 'A1:E1', look: 'title' },
    { range: 'A2', look: 'note' },
    ...[4, 14].flatMap((row) => [
      { range: `A${row}`, look: 'label' as const },
      { range: `B${row}`, look: 'inputText' as const },
      { range: `A${row + 1}:E${row + 1}`, look: 'heading' as const },
      { range: `A${row + 2}:E${row + 8}`, look: 'wrapped' as const },
    ]),
  ],
  formats: [],
  merged: [],
};
