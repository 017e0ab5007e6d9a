import { cautions } from '../../../engine/index.js';
import { line, type Look, type Part, rows, type SheetPlan, sheetPlan } from '../plan/index.js';

interface StartTerms {
  readonly title: string;
  readonly lead: string;
  readonly steps: readonly (readonly [what: string, how: string])[];
  readonly sheets: readonly (readonly [name: string, what: string])[];
}

/** What is to be known of the answers, whichever the template is. */
const answersNote = [
  'The answers are functions of the Lazaret add-in, all in the namespace QT. They follow what you write only while the add-in is loaded.',
  'Without it, a program shows the answers stored in this file until it recalculates them, and then reports that it does not know the function. The command lazaret recalc FILE --out COPY recalculates them without the add-in.',
  'An answer of #VALUE! or #N/A comes with a sentence that says which row or cell to fix: select the cell, or its warning sign, to read it.',
  'Blue cells are for you to fill in. A table without blue cells is a single formula, which needs the empty cells below it: write nothing there.',
] as const;

const lineHeight = 13;
/** Characters of these texts that the last column, or the last two, hold in a line. */
const inLine = { text: 104, wide: 132 };
const heightIn =
  (width: number) =>
  (text: string): number =>
    lineHeight * Math.ceil(text.length / width) + 3;
const words: Readonly<Record<number, string>> = { 4: 'four', 5: 'five', 6: 'six' };

/** What a workbook is, how to begin, what each sheet shows, what is to be known of the answers, and the cautions. */
export function startSheet({ title, lead, steps, sheets }: StartTerms): SheetPlan {
  const columns = 3;
  const section = (row: number, heading: string): Part => line({ row, column: 0 }, heading, 'section', { columns });
  const begin = 3;
  const places = begin + steps.length + 2;
  const answers = places + sheets.length + 2;
  const cautions = answers + answersNote.length + 2;
  return sheetPlan({
    name: 'Start',
    tab: 'read',
    widths: [4, 22, 84],
    page: { orientation: 'portrait', onOnePage: true },
    parts: [
      line('A1', title, 'title', { columns, height: 30 }),
      line('A2', lead, 'lead', { columns, isMerged: true, height: heightIn(inLine.wide)(lead) + 5 }),
      section(begin, `To begin, in ${words[steps.length] ?? steps.length} steps`),
      rows({
        at: { row: begin + 1, column: 0 },
        cells: steps.map(([what, how], i) => [i + 1, what, how]),
        looks: ['stepNumber', 'wrappedName', 'wrapped'],
        heights: steps.map(([, how]) => heightIn(inLine.text)(how)),
      }),
      section(places, 'The sheets'),
      rows({ at: { row: places + 1, column: 1 }, cells: sheets, looks: ['link', 'wrapped'] }),
      { links: sheets.map(([to], i) => ({ row: places + 1 + i, column: 1, to })) },
      section(answers, 'The answers'),
      rows({
        at: { row: answers + 1, column: 0 },
        cells: answersNote.map((text) => ['•', text]),
        looks: ['stepNumber', 'wrapped', 'wrapped'],
        mergedFrom: 1,
        heights: answersNote.map(heightIn(inLine.wide)),
      }),
      ...cautionRows(cautions, 2, heightIn(inLine.wide)),
    ],
  });
}

/**
 * The engine's cautions below a heading, one a row; as text, to be read without the add-in.
 *
 * @param at the row of the heading, counted from 0
 * @param columns how many columns a caution takes, beside its number
 */
export function cautionRows(at: number, columns: number, heightOf: (text: string) => number): Part[] {
  const heading = 'Cautions: copper is a poison, and fish die inside the band too';
  return [
    line({ row: at, column: 0 }, heading, 'section', { columns: columns + 1 }),
    rows({
      at: { row: at + 1, column: 0 },
      cells: cautions.map((text, i) => [i + 1, text]),
      looks: ['cautionNumber', ...Array.from({ length: columns }, (): Look => 'caution')],
      ...(columns > 1 ? { mergedFrom: 1 } : {}),
      heights: cautions.map(heightOf),
    }),
  ];
}
