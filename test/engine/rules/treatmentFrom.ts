import { cardCells, cardEntries } from '../../../src/engine/log/cardRead/cardEntries.js';
import { readCard } from '../../../src/engine/log/cardRead/readCard.js';
import { readLog } from '../../../src/engine/log/table/readLog.js';
import type { Treatment } from '../../../src/engine/rules/treatment.js';
import { treatmentOf } from '../../../src/engine/rules/treatmentOf.js';
import type { Cell } from '../../../src/engine/units/cell.js';
import { parseTime } from '../../../src/engine/units/time/parseTime.js';

const cellOf = (raw: unknown): Cell => (raw === undefined ? null : (raw as Cell));

/**
 * A treatment from a log written as text, its headings in the first line and a row a line, cells parted by `|`; row n of
 * a finding is the n-th line. The card is written the same way, `volume | 200 L`.
 */
export function treatmentFrom(log: string, card: string, asOf?: string | number): Treatment {
  const entries = cardEntries(rowsOf(card), cellOf);
  if (!entries.ok) throw new Error(JSON.stringify(entries.problem));
  const read = readCard(cardCells(entries.value));
  if (!read.ok) throw new Error(JSON.stringify(read.problem));
  const rows = readLog({
    log: { range: rowsOf(log), firstRow: 1, cellOf },
    gallon: read.value.gallon,
    needs: ['time', 'copper'],
  });
  if (!rows.ok) throw new Error(JSON.stringify(rows.problem));
  const now = typeof asOf === 'string' ? parseTime(asOf, { field: 'as of' }) : undefined;
  if (now !== undefined && !now.ok) throw new Error(JSON.stringify(now.problem));
  return treatmentOf(rows.value, read.value, typeof asOf === 'number' ? asOf : now?.value);
}

/** Lines of cells; a cell that is only a number is one. */
export function rowsOf(text: string): (string | number | null)[][] {
  return text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .map((line) => line.split('|').map(cellFrom));
}

function cellFrom(text: string): string | number | null {
  const plain = text.trim();
  if (plain === '') return null;
  return /^-?\d+(?:\.\d+)?$/.test(plain) ? Number(plain) : plain;
}
