import { type CellRange, oneCell } from '../../../sheet/index.js';
import type { Look } from './looks.js';
import type { Corner, Part, Rule, Validation } from './templatePlan.js';
import { withPlaces } from './withPlaces.js';

/** What a column holds: it decides on which side its cells and its heading stand, and how a moment is written. */
type ColumnKind = 'time' | 'number' | 'text' | 'share' | 'mixed';

export interface TableColumn {
  /** What formulas call it by; if left out, its heading. */
  readonly key?: string;
  /** `''` for none. */
  readonly heading: string;
  /** Written in place of the heading. */
  readonly headingNumber?: number;
  readonly kind: ColumnKind;
  readonly width?: number;
  readonly format?: string;
  /** Of its cells, where it is not the table's. */
  readonly look?: Look;
  readonly headingLook?: Look;
  readonly headingFormat?: string;
  /** In each row; `{key}` is the cell of this row in another column. */
  readonly formula?: string;
  /** What its cells take; `{it}` is the cell. */
  readonly takes?: Rule & { readonly prompt: string };
}

/** The looks of texts and of numbers, of the cells below a heading or of headings. */
export interface Body {
  readonly text: Look;
  readonly number: Look;
}

/** Bodies of tables: bare, small and wrapped, as a log, for writing, answers in bold. */
export const bodies = {
  plain: { text: 'cell', number: 'cellNumber' },
  small: { text: 'smallText', number: 'smallNumber' },
  given: { text: 'inputNumber', number: 'inputNumber' },
  givenText: { text: 'inputText', number: 'inputText' },
  answer: { text: 'answerNumber', number: 'answerNumber' },
} as const satisfies Readonly<Record<string, Body>>;

interface ColumnPlace {
  /** Where its heading stands. */
  readonly at: Corner;
  readonly cells: CellRange;
  readonly body: Body;
  readonly headings: Body;
  readonly inRow: InRow;
}

export type InRow = (text: string, row: number, it?: number) => string;

/** Writes the columns that a text names as cells of a row; `it` is the column that the text is about. */
export function rowWriter(columns: ReadonlyMap<string, number>): InRow {
  return (text, row, it) =>
    withPlaces(text, (name, sheet) => {
      const column = name === 'it' ? it : columns.get(name);
      return sheet !== undefined || column === undefined ? undefined : oneCell({ row, column });
    });
}

const usual: Readonly<Record<ColumnKind, { readonly format: string; readonly width: number }>> = {
  time: { format: 'yyyy-mm-dd hh:mm', width: 18 },
  number: { format: '', width: 10 },
  share: { format: '0%', width: 10 },
  text: { format: '', width: 24 },
  mixed: { format: '', width: 14 },
};

/** Looks, number format, width and what may be written, of one column: what it does not say comes from what it holds. */
export function columnPart(column: TableColumn, { at, cells, body, headings, inRow }: ColumnPlace): Part {
  const { heading, kind, format = usual[kind].format, look, headingLook, headingFormat, takes } = column;
  const side = kind === 'number' || kind === 'share' ? 'number' : 'text';
  const head = { range: oneCell(at), look: headingLook ?? headings[side] };
  return {
    areas: [
      ...(heading === '' ? [] : [headingFormat === undefined ? head : { ...head, format: headingFormat }]),
      { range: cells, look: look ?? body[side], ...(format === '' ? {} : { format }) },
    ],
    widths: [widthOf(column, at.column)],
    validations: takes === undefined ? [] : [validationOf(heading, takes, cells, inRow)],
  };
}

function widthOf({ width, kind, heading }: TableColumn, column: number): NonNullable<Part['widths']>[number] {
  if (width !== undefined) return { column, width };
  return { column, width: Math.max(usual[kind].width, heading.length + 3), isUsual: true };
}

function validationOf(
  title: string,
  { allows, prompt, refusal }: NonNullable<TableColumn['takes']>,
  range: CellRange,
  inRow: InRow,
): Validation {
  const formula = (text: string): string => inRow(text, range.firstRow, range.firstColumn);
  const told = allows.kind === 'formula' ? { ...allows, formula: formula(allows.formula) } : allows;
  return { range, allows: told, title, prompt, refusal };
}

/** The rows of one column. */
export function columnOf(rows: CellRange, column: number): CellRange {
  return { ...rows, firstColumn: column, lastColumn: column };
}
