import { answerTable, bodies, form, line, type Part } from '../plan/index.js';
import { demoSheet } from './demoSheet.js';

/** One disease in a blue cell, and what is said of it. */
function treatments(row: number, disease: string): Part[] {
  const key = `disease ${row}`;
  return [
    form({
      at: { row, column: 0 },
      looks: { given: 'inputText' },
      lines: { [key]: ['Disease', disease] },
    }),
    answerTable({
      at: { row: row + 1, column: 0 },
      id: 'TREATMENTFOR',
      key: `treatment ${row}`,
      given: `{${key}}`,
      columns: { Condition: 168, Copper: 276, Give: 296, When: 312, Source: 318 },
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
