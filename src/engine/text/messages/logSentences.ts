import { listed, type Sentences } from './sentences.js';

/** Headings that are read as what is missing. */
const headingWords: Readonly<Record<string, string>> = {
  time: '"Date" or "When"',
  copper: '"Copper" or "Cu ppm"',
  system: '"System" or "Tank"',
  lot: '"Lot" or "Batch"',
  'fish in': '"Fish in"',
  dead: '"Dead"',
};

/** A whole log, its headings, and the card of its system. */
export const logSentences = {
  'missing-heading': ({ kind }) =>
    `log has no heading read as ${kind}; give the range with its heading row, and head that column ${headingWords[kind] ?? `"${kind}"`}`,
  'two-headings': ({ kind, first, second }) =>
    `headings ${first} and ${second} are both read as ${kind}; give one of them another name`,
  'heading-unit': ({ heading, kind, unit, known }) =>
    `heading ${heading} is read as ${kind}, which ${unit} does not fit; write one of these: ${known}`,
  'row-without-time': ({ row }) => `row ${row} has no time and no date above it; write one, like "2026-03-01 08:00"`,
  'several-systems': ({ systems }) =>
    `log has ${systems.length} systems, ${listed(systems.slice(0, 3))}; give the rows of one, or use QT.SYSTEMS`,
  'card-shape': ({ rows, columns }) =>
    `card has ${rows} rows and ${columns} columns; give two columns, names and values`,
  'card-twice': ({ name, first, second }) =>
    `card names ${first} and ${second} are both read as ${name}; give only one of them`,
  'card-without': ({ card, name }) => `${card} has no ${name}; write ${name} and its value`,
  'log-without-rows': () => 'log has no row below its headings; write the first reading beside its time',
} satisfies Partial<Sentences>;
