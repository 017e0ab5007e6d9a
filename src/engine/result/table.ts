/** A number, a text, TRUE or FALSE, or '' for nothing: all that a table's cell may hold. */
export type TableCell = number | string | boolean;

/**
 * What an answer, or a column of one, holds where it is not blank: a date and time as a serial; a number, which under a
 * heading with % is already in percent; words, TRUE and FALSE among them; a share from 0 to 1; or now one, now another.
 */
export type AnswerKind = 'time' | 'number' | 'text' | 'share' | 'mixed';

export interface TableColumn {
  readonly heading: string;
  readonly kind: AnswerKind;
}

/** Columns with their headings, and the rows below them, each with a cell for every column. */
export interface Table {
  readonly columns: readonly TableColumn[];
  readonly rows: readonly (readonly TableCell[])[];
}

/** The columns of a table, from their headings in order and what each holds. */
export function columnsOf(kinds: Readonly<Record<string, AnswerKind>>): readonly TableColumn[] {
  return Object.entries(kinds).map(([heading, kind]) => ({ heading, kind }));
}
