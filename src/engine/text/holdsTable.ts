import type { HoldSpan } from '../hold/holdSpans.js';
import type { HoldEnd } from '../hold/holdTrace.js';
import { columnsOf, type Table } from '../result/table.js';
import { oneDecimal } from '../units/shown.js';

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
