import type { Block, PlanCell } from '../demo/sheetPlan.js';
import type { SheetPlan } from '../templatePlan.js';
import { cautionRows } from './cautionRows.js';

interface StartTerms {
  readonly title: string;
  readonly lead: string;
  readonly steps: readonly (readonly [what: string, how: string])[];
  readonly sheets: readonly (readonly [name: string, what: string])[];
  /** What is to be known of the answers. */
  readonly answers: readonly string[];
}

const line = 13;
/** Characters of these texts that the last column, or the last two, hold in a line. */
const inLine = { text: 104, wide: 132 };
const linesOf = (text: string, width: number): number => Math.ceil(text.length / width);

/** What a workbook is, how to begin, what each sheet shows, what is to be known of the answers, and the cautions. */
export function startSheet({ title, lead, steps, sheets, answers }: StartTerms): SheetPlan {
  const first = 5;
  const toBegin = stepRows(first, steps);
  const places = sheetRows(toBegin.next, sheets);
  const known = answerRows(places.next, answers);
  const cautions = cautionRows(known.next, 'C');
  return {
    name: 'Start',
    tab: 'read',
    widths: [4, 22, 84],
    heights: [
      { rows: [1, 1], height: 30 },
      { rows: [2, 2], height: line * linesOf(lead, inLine.wide) + 8 },
      ...steps.map(([, how], i) => heightOf(first + i, how, inLine.text)),
      ...answers.map((text, i) => heightOf(places.next + i, text, inLine.wide)),
      ...cautions.texts.map((text, i) => heightOf(known.next + i, text, inLine.wide)),
    ],
    blocks: [
      { at: 'A1', cells: [[title]] },
      { at: 'A2', cells: [[lead]] },
      ...[toBegin, places, known].flatMap(({ blocks }) => blocks),
      ...cautions.blocks,
    ],
    looks: [
      { range: 'A1:C1', look: 'title' },
      { range: 'A2:C2', look: 'lead' },
      ...[toBegin, places, known].flatMap(({ looks }) => looks),
      ...cautions.looks,
    ],
    formats: [],
    merged: ['A2:C2', ...wide(places.next, answers.length), ...wide(known.next, cautions.texts.length)],
    links: sheets.map(([name], i) => ({ at: `B${toBegin.next + i}`, to: name })),
    page: { orientation: 'portrait', onOnePage: true },
  };
}

interface Section {
  readonly blocks: SheetPlan['blocks'];
  readonly looks: SheetPlan['looks'];
  /** The first row of the section after it. */
  readonly next: number;
}

function section(at: number, heading: string, cells: Block, looks: SheetPlan['looks']): Section {
  return {
    blocks: [{ at: `A${at - 1}`, cells: [[heading]] }, cells],
    looks: [{ range: `A${at - 1}:C${at - 1}`, look: 'section' }, ...looks],
    next: at + cells.cells.length + 2,
  };
}

function stepRows(at: number, steps: StartTerms['steps']): Section {
  const last = at + steps.length - 1;
  const cells = steps.map(([what, how], i): PlanCell[] => [i + 1, what, how]);
  return section(at, `To begin, in ${words[steps.length] ?? steps.length} steps`, { at: `A${at}`, cells }, [
    { range: `A${at}:A${last}`, look: 'stepNumber' },
    { range: `B${at}:B${last}`, look: 'stepName' },
    { range: `C${at}:C${last}`, look: 'step' },
  ]);
}

function sheetRows(at: number, sheets: StartTerms['sheets']): Section {
  const last = at + sheets.length - 1;
  return section(at, 'The sheets', { at: `B${at}`, cells: sheets }, [
    { range: `B${at}:B${last}`, look: 'link' },
    { range: `C${at}:C${last}`, look: 'step' },
  ]);
}

function answerRows(at: number, answers: readonly string[]): Section {
  const last = at + answers.length - 1;
  const cells = answers.map((text): PlanCell[] => ['•', text]);
  return section(at, 'The answers', { at: `A${at}`, cells }, [
    { range: `A${at}:A${last}`, look: 'stepNumber' },
    { range: `B${at}:C${last}`, look: 'step' },
  ]);
}

function wide(at: number, count: number): string[] {
  return Array.from({ length: count }, (_, i) => `B${at + i}:C${at + i}`);
}

const words: Readonly<Record<number, string>> = { 4: 'four', 5: 'five', 6: 'six' };

function heightOf(row: number, text: string, width: number): { rows: readonly [number, number]; height: number } {
  return { rows: [row, row], height: line * linesOf(text, width) + 3 };
}
