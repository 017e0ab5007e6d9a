import type { ReadingColumns } from '../log/readingColumns.js';
import { instantDays, levelTolerance } from '../units/quantity.js';

/**
 * Rows whose bare 0 may be an empty cell.
 *
 * Definition: where no empty cell arrived as such, the rows, lowest first, that read 0 after the level had once reached
 * the low limit.
 */
export function doubtfulZeros({ when, low, row, count, zeroRows, hasBlanks }: ReadingColumns, limit: number): number[] {
  if (hasBlanks || zeroRows.length === 0) return [];
  const zeros = new Set(zeroRows);
  const doubtful: number[] = [];
  let reached = NaN;
  for (let index = 0; index < count; index++) {
    const at = when[index] ?? NaN;
    if (Number.isNaN(reached) && (low[index] ?? NaN) >= limit - levelTolerance) reached = at;
    const rowNumber = row[index] ?? 0;
    if (at - reached >= instantDays && zeros.has(rowNumber)) doubtful.push(rowNumber);
  }
  return doubtful.sort((a, b) => a - b);
}
