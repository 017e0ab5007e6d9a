import { line } from '../plan/line.js';
import { rows } from '../plan/rows.js';
import { sheetPlan } from '../plan/sheetPlan.js';
import type { Part, SheetPlan } from '../plan/templatePlan.js';
import { cautionRows } from './cautions.js';

interface StartTerms {
  readonly title: string;
  readonly lead: string;
  readonly steps: readonly (readonly [what: string, how: string])[];
  readonly sheets: readonly (readonly [name: string, what: string])[];
}

/** What is to be known of the answers, whichever the template is. */
const answersNote = [
  'The answers are functions of the add-in Lazaret, all in the namespace QT. It has to be loaded for them to follow what you write.',
  'Without it a program shows the answers stored in this file until it recalculates them, and then says that it does not know the function. The command lazaret recalc FILE --out COPY recalculates them without the add-in.',
  'An answer #VALUE! or #N/A has a sentence that says which row or cell to fix: select the cell, or its warning sign, to read it.',
  'Blue cells are for writing. Tables without a blue cell are one formula each, which needs the empty cells below it: write nothing there.',
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
        looks: ['stepNumber', 'stepName', 'step'],
        heights: steps.map(([, how]) => heightIn(inLine.text)(how)),
      }),
      section(places, 'The sheets'),
      rows({ at: { row: places + 1, column: 1 }, cells: sheets, looks: ['link', 'step'] }),
      { links: sheets.map(([to], i) => ({ row: places + 1 + i, column: 1, to })) },
      section(answers, 'The answers'),
      rows({
        at: { row: answers + 1, column: 0 },
        cells: answersNote.map((text) => ['•', text]),
        looks: ['stepNumber', 'step', 'step'],
        mergedFrom: 1,
        heights: answersNote.map(heightIn(inLine.wide)),
      }),
      ...cautionRows(cautions, 2, heightIn(inLine.wide)),
    ],
  });
}
