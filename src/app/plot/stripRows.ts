import type { PlotData } from './plotParts.js';

/** A line of marks below the levels, named at its left. */
export interface StripRow {
  readonly name: 'Holds' | 'No test' | 'Doses' | 'Changes' | 'Fish' | 'Unread';
  readonly top: number;
  readonly height: number;
  readonly middle: number;
}

/** The strips that this plot has something for, from top to bottom; the holds are always there. */
export function stripRows(data: PlotData, top: number): StripRow[] {
  const { holds, untested, doses, changes, fish, unread } = data;
  const wanted = [
    { name: 'Holds' as const, count: Math.max(1, holds.length), height: 26 },
    { name: 'No test' as const, count: untested.length, height: 18 },
    { name: 'Doses' as const, count: doses.length, height: 18 },
    { name: 'Changes' as const, count: changes.length, height: 18 },
    { name: 'Fish' as const, count: fish.length, height: 18 },
    { name: 'Unread' as const, count: unread.length, height: 18 },
  ];
  let next = top;
  return wanted
    .filter(({ count }) => count > 0)
    .map(({ name, height }) => {
      const row = { name, top: next, height, middle: next + height / 2 };
      next += height;
      return row;
    });
}
