import type { Content, Rule } from '../plan/index.js';

function choose(...values: string[]): Rule {
  const last = values.at(-1) ?? '';
  return { allows: { kind: 'list', values }, refusal: `Choose ${values.slice(0, -1).join(', ')} or ${last}.` };
}

/** What a cell of a card takes, and what is said when something else is written into it. */
export const cardRules = {
  forms: choose('sulfate', 'amine', 'chelated'),
  paces: choose('gradual', 'sensitive', 'urgent'),
  anything: { allows: { kind: 'anything' }, refusal: '' },
  between: (from: number, to: number): Rule => ({
    allows: { kind: 'decimal', from, to },
    refusal: `Write a number from ${from} to ${to}, or leave the cell empty.`,
  }),
} as const;

/** A row of a card: its name, the example's value, what may be written, what it is for. */
interface CardRow extends Rule {
  readonly name: string;
  readonly value: Content;
  readonly format?: string;
  readonly note: string;
}

const { forms, paces, anything, between } = cardRules;

/** The card of one tank, filled in for the example. `QT.CARD` reads every name, and its unit. */
export const cardEntries: readonly CardRow[] = [
  { name: 'System', value: 'Hospital tank', ...anything, note: 'The name of the tank, as you call it.' },
  {
    name: 'Volume L',
    value: 120,
    format: '0.#',
    ...between(1, 100_000),
    note: 'Net litres of water: see QT.NETVOLUME, or QT.VOLUMEBYDOSE for the real volume. A wrong volume makes every dose wrong.',
  },
  {
    name: 'Form',
    value: 'chelated',
    ...forms,
    note: 'The chemical form of the copper: sulfate (free copper, also citrate), amine, or chelated. Never the band of another form.',
  },
  {
    name: 'Strength mg/mL',
    value: 10,
    format: '0.##',
    ...between(0.2, 100),
    note: 'mg of copper in each mL of the solution; from a label see QT.STRENGTH.',
  },
  {
    name: 'Aim mg/L',
    value: null,
    format: '0.00',
    ...between(0.05, 20),
    note: 'The level to keep. Empty: the usual one of the form.',
  },
  {
    name: 'Meter accuracy mg/L',
    value: 0.05,
    format: '0.0##',
    ...between(0.001, 2),
    note: 'How far a reading may be off, as the maker says. Empty: no chance is computed.',
  },
  {
    name: 'Meter percent',
    value: null,
    format: '0%',
    ...between(0, 0.5),
    note: 'And this much of the reading, if the maker says so: 5%.',
  },
  {
    name: 'Reads from mg/L',
    value: null,
    format: '0.00',
    ...between(0, 20),
    note: 'The lowest level that the meter shows.',
  },
  {
    name: 'Reads',
    value: 'total',
    ...choose('free', 'total'),
    note: 'What the test reads: a test for free copper reads complexed copper low.',
  },
  {
    name: 'Days',
    value: 30,
    format: '0',
    ...between(1, 120),
    note: 'Unbroken days wanted. 30 in the treatment tank is the standard; 14 before a move to a copper-free one.',
  },
  {
    name: 'Pace',
    value: 'gradual',
    ...paces,
    note: 'How copper is raised: gradual over 4 days, sensitive over 7, urgent within 24 hours.',
  },
  {
    name: 'Longest gap h',
    value: 96,
    format: '0',
    ...between(12, 240),
    note: 'A longer stretch without a test starts the hold again. Empty: 96 hours.',
  },
  {
    name: 'Confirm',
    value: 1,
    format: '0',
    ...choose('1', '2'),
    note: '2: a hold begins only at the second of two readings in the band in a row.',
  },
  {
    name: 'Newcomers',
    value: 'count on',
    ...choose('count on', 'restart'),
    note: 'Whether the days of all fish start again when an untreated one comes in.',
  },
  {
    name: 'Fish',
    value: '2 clownfish, 1 royal gramma',
    ...anything,
    note: 'The fish being treated. Copper is for fish only: no invertebrates.',
  },
  { name: 'Disease', value: null, ...anything, note: 'If one was seen, such as velvet or white spot.' },
  { name: 'Temperature °C', value: 25, format: '0.0', ...between(5, 40), note: 'Used where the log gives none.' },
  { name: 'Salinity g/kg', value: 33, format: '0.0', ...between(5, 45), note: 'Used where the log gives none.' },
  { name: 'pH', value: 8.1, format: '0.0', ...between(5, 10), note: 'Used where the log gives none.' },
];
