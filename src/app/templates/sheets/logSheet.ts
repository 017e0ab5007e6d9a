import { type Content, sheetPlan, type SheetPlan, table, type TableColumn } from '../plan/index.js';
import { logColumns, type LogHeading } from './logColumns.js';

interface LogTerms {
  readonly headings: readonly LogHeading[];
  readonly rows: readonly (readonly Content[])[];
  /** Rows for the weeks to come. The table grows beyond where the program lets tables grow. */
  readonly room: number;
  /** Where the names of the systems stand. */
  readonly systems?: string;
  /** Columns that stay in view. */
  readonly frozen: number;
}

/** Rows below the heading that are searched for what was written below the table. */
const farDown = 4999;

/** The log, a named table that begins in row 1: a row named in a message is the row of the sheet. */
export function logSheet({ headings, rows, room, systems, frozen }: LogTerms): SheetPlan {
  const columns = headings.map((heading): TableColumn => {
    const column: Omit<TableColumn, 'heading'> = logColumns[heading];
    const { takes, kind, width = 0 } = column;
    const look = kind === 'number' ? 'cellNumber' : width > 15 ? 'wrapped' : 'cell';
    if (heading !== 'System' || systems === undefined || takes === undefined) return { heading, ...column, look };
    return { heading, ...column, look, takes: { ...takes, allows: { kind: 'listFrom', cells: systems } } };
  });
  const log = table({
    at: 'A1',
    key: 'log',
    name: 'Log',
    columns,
    rows,
    room,
    headings: { text: 'tableHeading', number: 'tableNumberHeading' },
    headingHeight: 44,
    tones: [
      {
        rules: [
          { when: 'LEFT({$By},7)="example"', tone: 'example' },
          { when: '{$Date and time}<>""', tone: 'row' },
        ],
      },
    ],
  });
  const times = log.columns.get('Date and time') ?? NaN;
  return sheetPlan({
    name: 'Log',
    tab: 'write',
    frozen: { rows: 1, columns: frozen },
    page: { orientation: 'landscape', repeated: { first: 0, last: 0 } },
    parts: [log, { places: { 'far down': { firstRow: 1, lastRow: farDown, firstColumn: times, lastColumn: times } } }],
  });
}
