import { readReadings } from '../../../src/engine/log/readReadings.js';
import type { ReadingColumns } from '../../../src/engine/log/readingColumns.js';
import type { Cell } from '../../../src/engine/units/cell.js';

/** Columns from a log written one row a line: `2026-03-01 08:00 | 2.1`. */
export function logOf(parts: TemplateStringsArray): ReadingColumns {
  const rows = parts
    .join('')
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => line.split('|').map((cell) => cell.trim()));
  return columnsOf(rows.map(([when = '', copper = '']) => [when, copper]));
}

/** Columns from rows of time and reading; the log must be readable. */
export function columnsOf(rows: readonly (readonly [Cell, Cell])[]): ReadingColumns {
  const columns = readReadings({
    when: rows.map(([when]) => [when]),
    copper: rows.map(([, copper]) => [copper]),
    cellOf: (raw) => (raw === undefined ? null : (raw as Cell)),
  });
  if (!columns.ok) throw new Error(JSON.stringify(columns.problem));
  return columns.value;
}
