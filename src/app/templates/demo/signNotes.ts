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
const headings = 13;
/** Room for the notes to come. */
const last = 40;

/** What a keeper saw, and the step each note calls for. */
export const signNotes: SheetPlan = {
  name: 'Signs',
  widths: [132, 400, 20, 132, 400, 180],
  rows: 60,
  frozenRows: 1,
  blocks: [
    { at: 'A1', cells: [['Signs in tank Q3, and the step each calls for']] },
    { at: 'A3', cells: [['What the steps mean (common practice)']] },
    {
      at: 'A4',
      cells: [
        ['test first', 'ammonia, oxygen and copper: velvet, flukes and ammonia look the same'],
        [
          'lower and wait',
          'copper in the band, ammonia none, the fish in for 48 hours: lower the level until it eats; below the band the hold is broken',
        ],
        ['raise slowly', 'it eats and acts normally again'],
        ['stop copper', 'signs a second time, after a recovery or three clear days: another treatment'],
        ['unread', 'the note was not understood, or says nothing of the fish'],
      ],
    },
    { at: 'A10', cells: [['An aquatic veterinarian decides.']] },
    { at: 'A12', cells: [['Notes, in your own words']] },
    { at: `A${headings}`, cells: [['When', 'What was seen'], ...notes] },
    { at: 'D12', cells: [[`Read by one formula, in D${headings}`]] },
    { at: `D${headings}`, cells: [[`=QT.SIGNS(A${headings}:A${last},B${headings}:B${last})`]] },
  ],
  looks: [
    { range: 'A1:F1', look: 'title' },
    { range: 'A3:F3', look: 'section' },
    { range: 'A4:A8', look: 'label' },
    { range: 'A10:F10', look: 'warning' },
    { range: 'A12:B12', look: 'section' },
    { range: 'D12:F12', look: 'section' },
    { range: `A${headings}:B${headings}`, look: 'heading' },
    { range: `A${headings + 1}:B${last}`, look: 'log' },
    { range: `D${headings}:F${headings}`, look: 'heading' },
    { range: `D${headings + 1}:F${last}`, look: 'log' },
  ],
  formats: [
    { range: `A${headings + 1}:A${last}`, format: 'yyyy-mm-dd hh:mm' },
    { range: `D${headings + 1}:D${last}`, format: 'yyyy-mm-dd hh:mm' },
  ],
  merged: ['A10:F10'],
};
