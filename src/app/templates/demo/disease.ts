import { answerTable } from '../plan/answerTable.js';
import { form } from '../plan/form.js';
import { line } from '../plan/line.js';
import { bodies } from '../plan/column.js';
import type { Part } from '../plan/templatePlan.js';
import { demoSheet } from './demoSheet.js';

/** One disease in a blue cell, and what is said of it. */
function treatments(row: number, disease: string): Part[] {
  const key = `disease ${row}`;
  return [
    form({
      at: { row, column: 0 },
      looks: { given: 'inputText' },
      lines: [{ key, label: 'Disease', given: disease }],
    }),
    answerTable({
      at: { row: row + 1, column: 0 },
      id: 'TREATMENTFOR',
      key: `treatment ${row}`,
      given: `{${key}}`,
      columns: {
        ...{ Condition: { width: 168 }, Copper: { width: 276 }, Give: { width: 296 } },
        ...{ When: { width: 312 }, Source: { width: 318 } },
      },
      room: 7,
      body: bodies.small,
      ruled: 'any',
    }),
  ];
}

/** What copper does to a disease and what it does not. */
export const disease = demoSheet({
  name: 'Disease',
  title: 'What copper treats and what it does not: write another disease into a blue cell',
  parts: [
    line(
      'A2',
      'Known, among others: white spot, velvet, Brooklynella, Uronema, flukes, bacteria, internal worms, unknown. An aquatic veterinarian decides.',
      'aside',
    ),
    ...treatments(3, 'white spot'),
    ...treatments(13, 'flukes'),
  ],
});
