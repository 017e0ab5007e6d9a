import { type CellRange, oneCell } from '../../../sheet/index.js';
import { cornerOf, line } from './line.js';
import type { Look } from './looks.js';
import { joined } from './sheetPlan.js';
import type { Content, Corner, Part, Rule, ToneRule } from './templatePlan.js';

/** A text that begins with "=" answers; anything else is written by a person. Beside it stands its unit, or a remark. */
export type FormLine = readonly [
  label: string,
  value: Content | readonly Content[],
  beside?: string,
  own?: string | LineOwn,
];

/** What is special about a line; a text alone is its number format. */
interface LineOwn {
  readonly format?: string;
  /** Its formula fills so many cells. */
  readonly fills?: number;
  readonly look?: Look;
  readonly takes?: Rule & { readonly prompt: string };
  readonly tones?: readonly ToneRule[];
  readonly isRefused?: boolean;
}

interface FormTerms {
  readonly at: string | Corner;
  /** Stands above the lines. */
  readonly title?: string;
  /** How many columns the line below the title runs through; if left out, three. */
  readonly columns?: number;
  /** By what formulas call the value; of several values also each, as `band 1` and `band 2`. */
  readonly lines: Readonly<Record<string, FormLine>>;
  /** Values take so many columns; what is beside them comes after. */
  readonly valueColumns?: number;
  /** A value's columns are one cell. */
  readonly isMerged?: boolean;
  readonly besideColumns?: number;
  readonly looks?: Partial<FormLooks>;
  /** Of the columns of labels, values and what is beside them. */
  readonly widths?: readonly number[];
  /** Of its lines, in points. */
  readonly height?: number;
  /** The place of all labels and values. */
  readonly key?: string;
}

interface FormLooks {
  readonly label: Look;
  readonly given: Look;
  readonly answer: Look;
  readonly beside: Look;
}

const usualLooks: FormLooks = { label: 'label', given: 'inputNumber', answer: 'answerNumber', beside: 'unit' };

/** Lines of a label, a value and its unit: cells to write into, and answers to what is written. */
export function form(terms: FormTerms): Part {
  const { title, columns = 3, widths = [], height, key } = terms;
  const at = cornerOf(terms.at);
  const first = at.row + (title === undefined ? 0 : 1);
  const lines = Object.entries(terms.lines).map(([name, each], i) =>
    linePart(name, each, { row: first + i, column: at.column }, terms),
  );
  const last = first + lines.length - 1;
  const all = { firstRow: first, firstColumn: at.column, lastRow: last, lastColumn: at.column + 1 };
  return joined([
    ...(title === undefined ? [] : [line(at, title, 'section', { columns })]),
    ...lines,
    {
      widths: widths.map((width, i) => ({ column: at.column + i, width })),
      ...(key === undefined ? {} : { places: { [key]: all } }),
      ...(height === undefined ? {} : { heights: [{ first, last, height }] }),
    },
  ]);
}

function linePart(name: string, [label, value, beside = '', more = {}]: FormLine, at: Corner, terms: FormTerms): Part {
  const { row, column } = at;
  const { valueColumns = 1, isMerged = false, besideColumns = 1 } = terms;
  const looks = { ...usualLooks, ...terms.looks };
  const own: LineOwn = typeof more === 'string' ? { format: more } : more;
  const contents = [value].flat();
  const filled = { ...oneCell({ row, column: column + 1 }), lastColumn: column + (own.fills ?? contents.length) };
  const range = { ...filled, lastColumn: Math.max(column + valueColumns, filled.lastColumn) };
  const after = range.lastColumn + 1;
  const isAnswer = typeof value === 'string' && value.startsWith('=');
  const { isRefused = false } = own;
  return {
    cells: [
      ...[label, ...contents].map((content, i) => ({ row, column: column + i, content: content ?? '' })),
      { row, column: after, content: beside },
    ]
      .filter(({ content }) => content !== '')
      .map((cell) => (isRefused && cell.column === column + 1 ? { ...cell, isRefused } : cell)),
    areas: [
      { range: oneCell({ row, column }), look: looks.label },
      { range, look: own.look ?? (isAnswer ? looks.answer : looks.given) },
      ...(own.format === undefined ? [] : [{ range: filled, format: own.format }]),
      ...(beside === '' && besideColumns === 1
        ? []
        : [{ range: { ...range, firstColumn: after, lastColumn: after + besideColumns - 1 }, look: looks.beside }]),
    ],
    places: placesOf(name, filled),
    merged: isMerged ? [range] : [],
    validations: own.takes === undefined ? [] : [{ range, title: label, ...own.takes }],
    conditions: own.tones === undefined ? [] : [{ range, rules: own.tones }],
  };
}

function placesOf(key: string, range: CellRange): NonNullable<Part['places']> {
  const { firstRow: row, firstColumn, lastColumn } = range;
  if (firstColumn === lastColumn) return { [key]: range };
  const cells = Array.from({ length: lastColumn - firstColumn + 1 }, (_, i): [string, CellRange] => {
    return [`${key} ${i + 1}`, oneCell({ row, column: firstColumn + i })];
  });
  return { [key]: range, ...Object.fromEntries(cells) };
}
