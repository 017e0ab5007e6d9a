import { serialOf } from '../serialOf.js';
import type { ShopRow } from './shopRow.js';

/** The row with a copper reading at or next after a time. */
export function testFrom(rows: readonly ShopRow[], time: string): ShopRow {
  const from = serialOf(time);
  const found = rows.find(({ when, copper }) => when >= from && copper !== undefined);
  if (found === undefined) throw new Error(`no test from ${time} on`);
  return found;
}

/** Another row of the same system, in its place in time. */
export function addedRow(rows: ShopRow[], time: string, by: string, cells: Partial<ShopRow>): ShopRow {
  const when = serialOf(time);
  const row: ShopRow = { ...cells, system: rows[0]?.system ?? '', when, by };
  const later = rows.findIndex((each) => each.when > when);
  rows.splice(later < 0 ? rows.length : later, 0, row);
  return row;
}

/** Readings from one time to another become what the factor or the rise makes of them. */
export function changedReadings(
  rows: readonly ShopRow[],
  { from, to }: { readonly from: string; readonly to: string },
  level: (written: number, when: number) => number,
): void {
  for (const row of rows) {
    const isIn = row.when > serialOf(from) && row.when < serialOf(to);
    if (isIn && typeof row.copper === 'number')
      row.copper = Number(Math.max(0, level(row.copper, row.when)).toFixed(2));
  }
}

/** Nobody wrote anything from one time to another, or not this. */
export function leftOut(
  rows: ShopRow[],
  { from, to }: { readonly from: string; readonly to: string },
  fits: (row: ShopRow) => boolean = () => true,
): void {
  const kept = rows.filter((row) => row.when <= serialOf(from) || row.when >= serialOf(to) || !fits(row));
  rows.splice(0, rows.length, ...kept);
}
