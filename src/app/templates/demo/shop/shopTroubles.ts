import { serialOf } from '../../sheets/rowsOf.js';
import type { ShopSystem } from './shopSystems.js';
import type { ShopRow } from './simulatedRows.js';

/** When carbon went into the filter of B2, and how fast it takes copper. [share of the level a day] */
const carbonAt = '2026-05-16 18:00';
const carbonRate = 0.14;

/** What went wrong, by system, planted into the rows that its simulated tank gave; where nothing did, nothing stands here. */
export const shopTroubles: Readonly<Record<string, (rows: ShopRow[], system: ShopSystem) => void>> = {
  A2: (rows, { volume, strength }) => {
    addedRow(rows, '2026-05-01 10:30', 'TM', { change: 120, note: 'copper forgotten in new water' });
    changedReadings(rows, { from: '2026-05-01 10:30', to: '2026-05-02 06:00' }, (level) => level * (1 - 120 / volume));
    leftOut(rows, { from: '2026-05-01 10:30', to: '2026-05-02 12:00' }, ({ dose }) => dose !== undefined);
    const next = testFrom(rows, '2026-05-02 06:00');
    next.copper = Number((Number(next.copper) * (1 - 120 / volume)).toFixed(2));
    next.dose = Number((((120 / volume) * 2.2 * volume) / strength).toFixed(1));
    next.note = 'dip, raising again';
  },
  A4: (rows, { volume, strength }) => {
    leftOut(rows, { from: '2026-05-17 12:00', to: '2026-05-18 12:00' }, ({ dose }) => dose !== undefined);
    addedRow(rows, '2026-05-17 20:40', 'JK', { dose: 3.5 });
    addedRow(rows, '2026-05-17 21:10', 'TM', { dose: 3.5, note: 'evening dose' });
    const rise = (7 * strength) / volume;
    changedReadings(rows, { from: '2026-05-17 21:10', to: '2026-05-19 00:00' }, (level) => level + rise);
  },
  B1: (rows) => {
    const slip = testFrom(rows, '2026-05-06 12:00');
    slip.copper = Number((Number(slip.copper) * 10).toFixed(1));
  },
  B2: (rows) => {
    leftOut(
      rows,
      { from: carbonAt, to: '2026-05-19 00:00' },
      ({ dose, copper }) => dose !== undefined && copper === undefined,
    );
    for (const row of rows) if (row.when > serialOf(carbonAt)) delete row.dose;
    addedRow(rows, carbonAt, 'JK', { note: 'carbon bag in the filter' });
    const days = (when: number): number => when - serialOf(carbonAt);
    changedReadings(
      rows,
      { from: carbonAt, to: '2026-05-19 00:00' },
      (level, when) => level * Math.exp(-carbonRate * days(when)),
    );
  },
  B4: (rows) => {
    leftOut(rows, { from: '2026-05-01 12:00', to: '2026-05-06 07:00' });
    testFrom(rows, '2026-05-06 07:00').note = 'back from stocktaking';
  },
  C1: (rows) => {
    addedRow(rows, '2026-05-10 18:30', 'JK', { dead: 3, note: '3 blue chromis' });
    for (const row of rows)
      if (row.when > serialOf('2026-05-17 12:00') && row.eating !== undefined) row.eating = 'angelfish not eating';
    leftOut(rows, { from: '2026-05-17 22:00', to: '2026-05-19 00:00' }, ({ copper }) => copper === undefined);
    for (const row of rows) if (row.when > serialOf('2026-05-17 22:00')) delete row.dose;
  },
  C2: (rows) => {
    testFrom(rows, '2026-05-11 12:00').copper = 'LOW';
  },
  C3: (rows) => {
    addedRow(rows, '2026-04-28 16:00', 'TM', { fishOut: '2 clownfish to display' });
    addedRow(rows, '2026-05-07 17:15', 'JK', { note: 'dechlorinator in the new water' });
  },
  C4: (rows) => {
    leftOut(rows, { from: '2026-05-16 21:30', to: '2026-05-19 00:00' });
  },
};

/** The row with a copper reading at or next after a time. */
function testFrom(rows: readonly ShopRow[], time: string): ShopRow {
  const from = serialOf(time);
  const found = rows.find(({ when, copper }) => when >= from && copper !== undefined);
  if (found === undefined) throw new Error(`no test from ${time} on`);
  return found;
}

/** Another row of the same system, in its place in time. */
function addedRow(rows: ShopRow[], time: string, by: string, cells: Partial<ShopRow>): ShopRow {
  const when = serialOf(time);
  const row: ShopRow = { ...cells, system: rows[0]?.system ?? '', when, by };
  const later = rows.findIndex((each) => each.when > when);
  rows.splice(later < 0 ? rows.length : later, 0, row);
  return row;
}

/** Readings from one time to another become what the factor or the rise makes of them. */
function changedReadings(
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
function leftOut(
  rows: ShopRow[],
  { from, to }: { readonly from: string; readonly to: string },
  fits: (row: ShopRow) => boolean = () => true,
): void {
  const kept = rows.filter((row) => row.when <= serialOf(from) || row.when >= serialOf(to) || !fits(row));
  rows.splice(0, rows.length, ...kept);
}
