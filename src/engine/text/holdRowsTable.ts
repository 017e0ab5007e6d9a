import type { HoldRow, ReadingNote } from '../hold/holdRows.js';
import { columnsOf, type Table } from '../result/table.js';
import { secondDays } from '../units/quantity.js';
import { oneDecimal } from '../units/shown.js';

export const holdRowsColumns = columnsOf({
  When: 'time',
  Copper: 'number',
  Status: 'text',
  'Hold day': 'number',
  'Days done': 'number',
  Row: 'number',
  Note: 'text',
});

// Taken once: in some hosts every look-up of a global is slow.
const { floor } = Math;

/** Readings with their place in the hold, as HOLDROWS spills them. */
export function holdRowsTable(rows: readonly HoldRow[]): Table {
  return {
    columns: holdRowsColumns,
    rows: rows.map((row) => [
      row.when,
      row.level,
      row.status,
      row.elapsed === null ? '' : floor(row.elapsed + secondDays) + 1,
      row.elapsed === null ? '' : floor((row.elapsed + secondDays) * 100) / 100,
      row.row,
      row.notes.length === 0 ? '' : row.notes.map(noteText).join('; '),
    ]),
  };
}

function noteText(note: ReadingNote): string {
  switch (note.kind) {
    case 'approximate':
    case 'top unknown':
    case 'hold starts':
      return note.kind;
    case 'allowance':
      return 'inside only by the allowance';
    case 'tested after':
      return `tested after ${oneDecimal(note.days * 24)} h`;
    case 'hold broken':
      return `hold broken after ${oneDecimal(note.days)} days`;
  }
}
