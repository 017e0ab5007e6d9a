import type { PlanCell } from '../demo/sheetPlan.js';
import { cardRules } from '../sheets/cardRules.js';
import type { SheetPlan, Validation } from '../templatePlan.js';

interface CardColumn {
  readonly name: string;
  readonly width: number;
  readonly format: string;
  readonly allows: Validation['allows'];
  readonly refusal: string;
  readonly prompt: string;
}

const { forms, paces, anything, between } = cardRules;

/** What the shop says of each system, in words that `QT.CARD` reads. */
export const cardColumns: readonly CardColumn[] = [
  { name: 'System', width: 12, format: '', ...anything, prompt: 'A name, each once, as it is written in the log.' },
  {
    name: 'Volume L',
    width: 10,
    format: '0.#',
    ...between(1, 100_000),
    prompt: 'Net litres of water in all tanks, sump and pipes. A wrong volume makes every dose wrong.',
  },
  {
    name: 'Form',
    width: 12,
    format: '',
    ...forms,
    prompt: 'sulfate (free copper, also citrate), amine or chelated. Never the band of another form.',
  },
  {
    name: 'Strength mg/mL',
    width: 12,
    format: '0.##',
    ...between(0.2, 100),
    prompt: 'mg of copper in each mL of the solution used in this system.',
  },
  {
    name: 'Aim mg/L',
    width: 10,
    format: '0.00',
    ...between(0.05, 20),
    prompt: 'The level to keep. Empty: the usual one of the form.',
  },
  {
    name: 'Meter accuracy mg/L',
    width: 14,
    format: '0.0##',
    ...between(0.001, 2),
    prompt: 'How far a reading may be off, as the maker says.',
  },
  {
    name: 'Days',
    width: 8,
    format: '0',
    ...between(1, 120),
    prompt: 'Unbroken days wanted: 30, or 14 before a move to a copper-free tank.',
  },
  { name: 'Pace', width: 12, format: '', ...paces, prompt: 'How copper is raised: gradual, sensitive or urgent.' },
  {
    name: 'Longest gap h',
    width: 15,
    format: '0',
    ...between(12, 240),
    prompt: 'A longer stretch without a test starts the hold anew. Empty: 96.',
  },
  { name: 'Disease', width: 24, format: '', ...anything, prompt: 'If one was seen, such as velvet or white spot.' },
];

const examples: readonly (readonly PlanCell[])[] = [
  ['Q1', 240, 'chelated', 20, null, 0.05, 30, 'gradual', null, null],
  ['Q2', 180, 'amine', 5, null, 0.02, 30, 'gradual', null, null],
  ['Q3', 160, 'sulfate', 2, null, 0.01, 30, 'gradual', null, null],
  ['Q4', 240, 'chelated', 20, null, 0.05, 30, 'gradual', null, null],
  ['Q5', 200, 'amine', 5, null, 0.02, 30, 'sensitive', null, null],
  ['Q6', 240, 'chelated', 20, null, 0.05, 14, 'gradual', null, null],
];

const heading = 4;
const first = heading + 1;
/** Room for systems to come. */
const last = heading + 16;
const letter = (at: number): string => 'ABCDEFGHIJ'.charAt(at);
const end = letter(cardColumns.length - 1);

/** The names of the systems, as a list to choose from. */
export const systemNames = `Systems!$A$${first}:$A$${last}`;

/** A card for each system, a row each. */
export const shopCards: SheetPlan = {
  name: 'Systems',
  tab: 'write',
  widths: cardColumns.map(({ width }) => width),
  heights: [
    { rows: [1, 1], height: 28 },
    { rows: [heading, heading], height: 44 },
  ],
  frozen: { rows: heading, columns: 1 },
  blocks: [
    { at: 'A1', cells: [['The cards of all systems']] },
    {
      at: 'A2',
      cells: [
        [
          'A row for each system; the six here are invented, write yours over them. What is left empty is usual or unknown.',
        ],
      ],
    },
    { at: `A${heading}`, cells: [cardColumns.map(({ name }) => name)] },
    { at: `A${first}`, cells: examples },
  ],
  looks: [
    { range: `A1:${end}1`, look: 'title' },
    { range: `A2:${end}2`, look: 'note' },
    ...cardColumns.map(({ format }, at) => ({
      range: `${letter(at)}${heading}`,
      look: format === '' ? ('tableHeading' as const) : ('tableNumberHeading' as const),
    })),
    ...cardColumns.map(({ format }, at) => ({
      range: `${letter(at)}${first}:${letter(at)}${last}`,
      look: format === '' ? ('input' as const) : ('inputNumber' as const),
    })),
  ],
  formats: cardColumns.flatMap(({ format }, at) =>
    format === '' ? [] : [{ range: `${letter(at)}${first}:${letter(at)}${last}`, format }],
  ),
  merged: [`A2:${end}2`],
  table: { name: 'Cards', range: `A${heading}:${end}${last}` },
  validations: cardColumns.map(({ name, allows, refusal, prompt }, at) => ({
    range: `${letter(at)}${first}:${letter(at)}${last}`,
    allows,
    title: name,
    prompt,
    refusal,
  })),
  page: { orientation: 'landscape', repeated: `${heading}:${heading}` },
};
