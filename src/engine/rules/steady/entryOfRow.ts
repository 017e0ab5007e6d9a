import type { Log } from '../../log/table/log.js';

/** The entry of a row whose time is known, by that time: a search through all rows for each of them costs their square. */
export function entryOfRow({ count, when, row }: Log, wanted: number, at: number): number {
  let first = 0;
  let after = count;
  while (first < after) {
    const middle = (first + after) >>> 1;
    if ((when[middle] ?? NaN) < at) first = middle + 1;
    else after = middle;
  }
  while (first < count && row[first] !== wanted) first++;
  return first;
}
