import type { ColumnKind } from '../../engine/index.js';
import type { BookSheet } from '../../sheet/index.js';
import { headingKinds, type SheetRow } from './headingKinds.js';
import { isBlankCell } from './cellsAt.js';

/** The columns of a log below one heading row. */
export interface HeadedBlock {
  readonly headingRow: number;
  readonly firstColumn: number;
  readonly lastColumn: number;
  readonly time: number;
  readonly copper: number;
}

/** A column without a heading belongs to the log if something stands below in so many rows. */
const lookedAtRows = 200;

/**
 * The logs that begin in a row: its columns fall apart where one is empty from the heading down. A time in one part and the
 * copper in another make one log of both.
 */
export function headedBlocks(at: SheetRow): HeadedBlock[] {
  const kinds = headingKinds(at);
  if (kinds === null) return [];
  const parts = partsOf(at.sheet, at.row, kinds.length);
  const whole = parts.flatMap((part) => blockOf(at.row, kinds, part) ?? []);
  if (whole.length > 0) return whole;
  const named = parts.filter(([first, last]) =>
    kinds.slice(first, last + 1).some((kind) => kind === 'time' || kind === 'copper'),
  );
  const joined = blockOf(at.row, kinds, [named[0]?.[0] ?? 0, named[named.length - 1]?.[1] ?? 0]);
  return joined === null || isBlankCell(at.sheet, at.row + 1, joined.time) ? [] : [joined];
}

type Part = readonly [first: number, last: number];

function partsOf(sheet: BookSheet, row: number, width: number): Part[] {
  const parts: Part[] = [];
  let first = -1;
  for (let column = 0; column <= width; column++) {
    const isIn = column < width && !isEmptyColumn(sheet, row, column);
    if (isIn && first === -1) first = column;
    if (!isIn && first !== -1) {
      parts.push([first, column - 1]);
      first = -1;
    }
  }
  return parts;
}

function isEmptyColumn(sheet: BookSheet, row: number, column: number): boolean {
  const last = Math.min(sheet.rows.length - 1, row + lookedAtRows);
  for (let at = row; at <= last; at++) if (!isBlankCell(sheet, at, column)) return false;
  return true;
}

/** Columns at the edges without a heading are notes beside the log, not of it. */
function blockOf(headingRow: number, kinds: readonly (ColumnKind | null)[], [first, last]: Part): HeadedBlock | null {
  const own = kinds.slice(first, last + 1);
  const [time, copper] = [own.indexOf('time'), own.indexOf('copper')];
  if (time === -1 || copper === -1) return null;
  return { headingRow, firstColumn: first, lastColumn: last, time: first + time, copper: first + copper };
}
