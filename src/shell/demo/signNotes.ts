import { serialOf } from './serialOf.js';
import type { PlanCell, SheetPlan } from './sheetPlan.js';

const notes: readonly PlanCell[][] = [
  [serialOf('2026-04-08 20:00'), 'anthias breathing fast'],
  [serialOf('2026-04-09 08:00'), 'anthias not eating, ammonia badge clear'],
  [serialOf('2026-04-10 08:00'), 'anthias eating again'],
  [serialOf('2026-04-12 08:00'), 'all eating'],
  [serialOf('2026-04-13 08:00'), 'new pump fitted'],
  [serialOf('2026-04-20 08:00'), 'tang flashing, hiding'],
];

/** What a keeper saw, and the step each note calls for. */
export const signNotes: SheetPlan = {
  name: 'Signs',
  widths: [132, 300, 20, 132, 400, 180],
  rows: 60,
  frozenRows: 4,
  blocks: [
    { at: 'A1', cells: [['Signs in tank Q3, and the step each calls for']] },
    {
      at: 'A2',
      cells: [['One formula, in D4. Write what you see in your own words; what is not understood says so.']],
    },
    { at: 'A4', cells: [['When', 'What was seen'], ...notes] },
    { at: 'D4', cells: [['=QT.SIGNS(A4:A30,B4:B30)']] },
    { at: 'D14', cells: [['What the steps mean (common practice)']] },
    {
      at: 'D15',
      cells: [
        ['test first', 'ammonia, oxygen and copper: velvet, flukes and ammonia look the same'],
        [
          'lower and wait',
          'if copper is in the band, ammonia none, and the fish in for 48 hours: lower it until the fish eats',
        ],
        ['raise slowly', 'it eats and acts normally again; lowering below the band has broken the hold'],
        ['stop copper', 'signs a second time, after a recovery or three clear days: another treatment'],
        ['unread', 'the note was not understood, or says nothing of the fish'],
      ],
    },
    { at: 'D21', cells: [['A fish in distress is a matter for an aquatic veterinarian.']] },
  ],
  looks: [
    { range: 'A1:F1', look: 'title' },
    { range: 'A2', look: 'note' },
    { range: 'A4:B4', look: 'heading' },
    { range: 'A5:B30', look: 'log' },
    { range: 'D4:F4', look: 'heading' },
    { range: 'D5:F12', look: 'spill' },
    { range: 'D14:F14', look: 'section' },
    { range: 'D15:D19', look: 'label' },
    { range: 'D21:F21', look: 'warning' },
  ],
  formats: [
    { range: 'A5:A30', format: 'yyyy-mm-dd hh:mm' },
    { range: 'D5:D12', format: 'yyyy-mm-dd hh:mm' },
  ],
  merged: ['D21:F21'],
};
