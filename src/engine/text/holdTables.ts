import type { HoldRow, ReadingNote } from '../hold/holdRows.js';
import { columnsOf, type Table } from '../result/table.js';
import { secondDays } from '../units/quantity.js';
import { oneDecimal } from '../units/shown.js';
import type { HoldSpan } from '../hold/holdSpans.js';
import type { HoldEnd } from '../hold/holdTrace.js';

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

export const holdsColumns = columnsOf({
  From: 'time',
  To: 'time',
  Days: 'number',
  Enough: 'text',
  'Ended by': 'text',
  Row: 'number',
});

/** The holds of a log, as HOLDS spills them. */
export function holdsTable(spans: readonly HoldSpan[]): Table {
  return {
    columns: holdsColumns,
    rows: spans.map((span) => [
      span.from,
      span.to,
      span.days,
      span.enough ? 'yes' : span.endedBy.kind === 'running' ? 'running' : 'no',
      endText(span.endedBy),
      span.row ?? '',
    ]),
  };
}

function endText(end: HoldEnd): string {
  switch (end.kind) {
    case 'below':
      return 'below';
    case 'untested':
      return `untested ${oneDecimal(end.days * 24)} h`;
    case 'running':
      return 'still running';
  }
}
