import type { Ready } from '../audit/readyGates.js';
import { columnsOf, type Table } from '../result/table.js';
import * as limits from '../limits/limits.js';
import { gateText } from './gateText.js';

export const readyColumns = columnsOf({ Gate: 'text', Met: 'text', Since: 'time', Why: 'text' });

/** The gates before fish are let go, the verdict in the last row, as READY spills them. */
export function readyTable(ready: Ready): Table {
  const rows = ready.gates.map(({ name, met, since, why }) => [name, met, since ?? '', gateText(why)]);
  return { columns: readyColumns, rows: [...rows, [ready.verdict, '', '', verdictText(ready)]] };
}

function verdictText({ verdict, against, mayTransfer }: Ready): string {
  switch (verdict) {
    case 'release':
      return 'every gate is met; an aquatic veterinarian and local law come before this table';
    case 'a vet decides':
      return `against it: ${against.join(', ')}; waiting does not answer it, ask an aquatic veterinarian`;
    case 'not yet':
      return `not met: ${against.join(', ')}${mayTransfer ? `; ${transfer}` : ''}`;
  }
}

const transfer =
  `fish that have had ${limits.transferDays.value} days of this hold may go to a dry or new, copper-free observation tank, ` +
  'with no water, nets or equipment (common practice)';
