import { type CellRange, oneCell } from '../../../sheet/index.js';
import { cornerOf, line } from './line.js';
import type { Look } from './look.js';
import type { Content, Corner, Part, Rule, ToneRule } from './templatePlan.js';

interface FormLine {
  /** What formulas call its value by, or each of several values. */
  readonly key?: string | readonly string[];
  readonly label: string;
  /** What a person writes, or several side by side. */
  readonly given?: Content | readonly Content[];
  /** The formula of an answer; of one that fills two cells, `fills: 2`. */
  readonly answer?: string;
  readonly fills?: number;
  readonly format?: string;
  /** Of the value, where it is not the form's. */
  readonly look?: Look;
  /** The unit, or a remark. */
  readonly beside?: string;
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
  readonly lines: readonly FormLine[];
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
  const { title, lines, widths = [], height, key } = terms;
  const at = cornerOf(terms.at);
  const first = at.row + (title === undefined ? 0 : 1);
  const last = first + lines.length - 1;
  const parts = [
    ...(title === undefined ? [] : [line(at, title, 'section', { columns: terms.columns ?? 3 })]),
    ...lines.map((each, i) => linePart(each, { row: first + i, column: at.column }, terms)),
  ];
  const all = { firstRow: first, firstColumn: at.column, lastRow: last, lastColumn: at.column + 1 };
  return {
    cells: parts.flatMap(({ cells = [] }) => cells),
    areas: parts.flatMap(({ areas = [] }) => areas),
    places: Object.assign(
      {},
      ...parts.map(({ places }) => places),
      key === undefined ? {} : { [key]: all },
    ) as NonNullable<Part['places']>,
    widths: widths.map((width, i) => ({ column: at.column + i, width })),
    merged: parts.flatMap(({ merged = [] }) => merged),
    validations: parts.flatMap(({ validations = [] }) => validations),
    conditions: parts.flatMap(({ conditions = [] }) => conditions),
    ...(height === undefined ? {} : { heights: [{ first, last, height }] }),
  };
}

function linePart(each: FormLine, { row, column }: Corner, terms: FormTerms): Part {
  const { valueColumns = 1, isMerged = false, besideColumns = 1 } = terms;
  const looks = { ...usualLooks, ...terms.looks };
  const { key, label, answer, format, beside, takes, isRefused = false } = each;
  const value = column + 1;
  const contents: readonly Content[] = answer === undefined ? [each.given ?? null].flat() : [answer];
  const values = Math.max(valueColumns, each.fills ?? contents.length);
  const range = { ...oneCell({ row, column: value }), lastColumn: value + values - 1 };
  const filled = { ...range, lastColumn: value + (each.fills ?? contents.length) - 1 };
  const look = each.look ?? (answer === undefined ? looks.given : looks.answer);
  const after = value + values;
  const besides = { ...oneCell({ row, column: after }), lastColumn: after + besideColumns - 1 };
  return {
    cells: [label, ...contents]
      .flatMap((content, i) =>
        content === null || content === ''
          ? []
          : [{ row, column: column + i, content, ...(isRefused && i > 0 ? { isRefused } : {}) }],
      )
      .concat(beside === undefined ? [] : [{ row, column: after, content: beside }]),
    areas: [
      { range: oneCell({ row, column }), look: looks.label },
      { range, look },
      ...(format === undefined ? [] : [{ range: filled, format }]),
      ...(beside === undefined && besideColumns === 1 ? [] : [{ range: besides, look: looks.beside }]),
    ],
    places: placesOf(key, filled),
    ...(isMerged ? { merged: [range] } : {}),
    ...(takes === undefined ? {} : { validations: [{ range, title: label, ...takes }] }),
    ...(each.tones === undefined ? {} : { conditions: [{ range, rules: each.tones }] }),
  };
}

function placesOf(key: FormLine['key'], range: CellRange): NonNullable<Part['places']> {
  if (typeof key === 'string') return { [key]: range };
  const cells = (key ?? []).map((each, i): [string, CellRange] => {
    return [each, oneCell({ row: range.firstRow, column: range.firstColumn + i })];
  });
  return Object.fromEntries(cells);
}
