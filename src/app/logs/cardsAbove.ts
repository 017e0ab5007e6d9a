import { type CellRange, overlaps } from '../../sheet/index.js';
import type { FoundCard, FoundLog } from './found.js';

/**
 * The cards that head a log on a sheet of several: above it, over its columns, and no other log in between. None where the
 * sheet has but one log, as there each of its cards may be meant.
 */
export function cardsAbove(log: FoundLog, logs: readonly FoundLog[], cards: readonly FoundCard[]): FoundCard[] {
  const others = logs.filter((other) => other.sheet === log.sheet && !overlaps(other.range, log.range));
  if (others.length === 0) return [];
  const isBetween = ({ range }: FoundLog, card: CellRange): boolean =>
    sharesColumns(range, log.range) && range.firstRow > card.lastRow && range.firstRow < log.range.firstRow;
  return cards.filter(
    ({ sheet, range, names }) =>
      sheet === log.sheet &&
      names === null &&
      sharesColumns(range, log.range) &&
      range.lastRow < log.range.firstRow &&
      !others.some((other) => isBetween(other, range)),
  );
}

function sharesColumns(one: CellRange, other: CellRange): boolean {
  return one.firstColumn <= other.lastColumn && other.firstColumn <= one.lastColumn;
}
