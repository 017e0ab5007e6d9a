import { addressOf } from '../../../sheet/index.js';
import type { PlanCell } from '../demo/sheetPlan.js';
import type { Condition, SheetPlan, Validation } from '../templatePlan.js';
import { logColumns, type LogColumn, type LogHeading } from './logColumns.js';

interface LogTerms {
  readonly headings: readonly LogHeading[];
  readonly rows: readonly (readonly PlanCell[])[];
  /** Its last row: rows for the weeks to come. The table grows beyond where the program lets tables grow. */
  readonly lastRow: number;
  /** Where the names of the systems stand. */
  readonly systems?: string;
  /** Columns that stay in view. */
  readonly frozen: number;
}

/** The log, a named table that begins in row 1: a row named in a message is the row of the sheet. */
export function logSheet({ headings, rows, lastRow, systems, frozen }: LogTerms): SheetPlan {
  const columns = headings.map((heading, column): readonly [LogHeading, LogColumn, number] => [
    heading,
    logColumns[heading],
    column,
  ]);
  const range = (column: number): string => `${addressOf(1, column)}:${addressOf(lastRow - 1, column)}`;
  const all = `A1:${addressOf(lastRow - 1, headings.length - 1)}`;
  return {
    name: 'Log',
    tab: 'write',
    widths: columns.map(([, { width }]) => width),
    heights: [{ rows: [1, 1], height: 44 }],
    frozen: { rows: 1, columns: frozen },
    blocks: [
      { at: 'A1', cells: [headings] },
      { at: 'A2', cells: rows },
    ],
    looks: columns.flatMap(([, { isNumber, width }, at]) => [
      { range: addressOf(0, at), look: isNumber ? 'tableNumberHeading' : 'tableHeading' },
      { range: range(at), look: isNumber ? 'logNumber' : width > 15 ? 'logText' : 'log' },
    ]),
    formats: columns.flatMap(([, { format }, at]) => (format === '' ? [] : [{ range: range(at), format }])),
    merged: [],
    table: { name: 'Log', range: all },
    validations: columns.map((each) => validation(each, range(each[2]), systems)),
    conditions: [rowTones(headings, `A2:${addressOf(lastRow - 1, headings.length - 1)}`)],
    page: { orientation: 'landscape', repeated: '1:1' },
  };
}

/** Rows with a time have a line below them, and those of the examples are slanted. */
function rowTones(headings: readonly LogHeading[], range: string): Condition {
  const column = (heading: LogHeading): string => addressOf(1, headings.indexOf(heading));
  return {
    range,
    rules: [
      { when: `LEFT($${column('By')},7)="example"`, tone: 'example' },
      { when: `$${column('Date and time')}<>""`, tone: 'row' },
    ],
  };
}

function validation(
  [heading, { allows, prompt, refusal }, at]: readonly [LogHeading, LogColumn, number],
  range: string,
  systems: string | undefined,
): Validation {
  const isSystem = heading === 'System' && systems !== undefined;
  return {
    range,
    allows: isSystem ? { kind: 'listFrom', cells: systems } : allows(addressOf(1, at)),
    title: heading,
    prompt,
    refusal,
  };
}
