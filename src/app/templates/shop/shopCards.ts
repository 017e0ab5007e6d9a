import { type Content, line, type Rule, sheetPlan, type SheetPlan, table, type TableColumn } from '../plan/index.js';
import { cardRules } from '../sheets/cardEntries.js';

const { forms, paces, anything, between } = cardRules;

function text(heading: string, width: number, rule: Rule, prompt: string): TableColumn {
  return { heading, kind: 'text', width, takes: { ...rule, prompt } };
}

function number(heading: string, width: number, format: string, rule: Rule, prompt: string): TableColumn {
  return { heading, kind: 'number', width, format, takes: { ...rule, prompt } };
}

/** What the shop says of each system, in words that `QT.CARD` reads. */
export const cardColumns: readonly TableColumn[] = [
  text('System', 12, anything, 'A name, each once, as it is written in the log.'),
  number(
    'Volume L',
    10,
    '0.#',
    between(1, 100_000),
    'Net litres of water in all tanks, sump and pipes. A wrong volume makes every dose wrong.',
  ),
  text('Form', 12, forms, 'sulfate (free copper, also citrate), amine or chelated. Never the band of another form.'),
  number(
    'Strength mg/mL',
    12,
    '0.##',
    between(0.2, 100),
    'mg of copper in each mL of the solution used in this system.',
  ),
  number('Aim mg/L', 10, '0.00', between(0.05, 20), 'The level to keep. Empty: the usual one of the form.'),
  number('Meter accuracy mg/L', 14, '0.0##', between(0.001, 2), 'How far a reading may be off, as the maker says.'),
  number('Days', 8, '0', between(1, 120), 'Unbroken days wanted: 30, or 14 before a move to a copper-free tank.'),
  text('Pace', 12, paces, 'How copper is raised: gradual, sensitive or urgent.'),
  number(
    'Longest gap h',
    15,
    '0',
    between(12, 240),
    'A longer stretch without a test starts the hold again. Empty: 96.',
  ),
  text('Disease', 24, anything, 'If one was seen, such as velvet or white spot.'),
];

const examples: readonly (readonly Content[])[] = [
  ['Q1', 240, 'chelated', 20, null, 0.05, 30, 'gradual', null, null],
  ['Q2', 180, 'amine', 5, null, 0.02, 30, 'gradual', null, null],
  ['Q3', 160, 'sulfate', 2, null, 0.01, 30, 'gradual', null, null],
  ['Q4', 240, 'chelated', 20, null, 0.05, 30, 'gradual', null, null],
  ['Q5', 200, 'amine', 5, null, 0.02, 30, 'sensitive', null, null],
  ['Q6', 240, 'chelated', 20, null, 0.05, 14, 'gradual', null, null],
];

/** A card for each system, a row each, with room for systems to come. */
export const shopCards: SheetPlan = sheetPlan({
  name: 'Systems',
  tab: 'write',
  frozen: { rows: 4, columns: 1 },
  page: { orientation: 'landscape', repeated: { first: 3, last: 3 } },
  parts: [
    line('A1', 'The cards of all systems', 'title', { columns: cardColumns.length, height: 28 }),
    line(
      'A2',
      'A row for each system. The six here are invented: overwrite them. An empty cell means the usual value, or unknown.',
      'note',
      { columns: cardColumns.length, isMerged: true },
    ),
    table({
      at: 'A4',
      key: 'cards',
      name: 'Cards',
      columns: cardColumns,
      rows: examples,
      room: 16,
      body: { text: 'input', number: 'inputNumber' },
      headings: { text: 'tableHeading', number: 'tableNumberHeading' },
      headingHeight: 44,
    }),
  ],
});
