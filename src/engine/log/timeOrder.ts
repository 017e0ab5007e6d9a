/**
 * The order that puts times in sequence, rows of one time as they stand. A merge sort over the indexes: a comparator
 * called for each of a million shuffled rows costs ten times as much.
 */
export function timeOrder(when: Float64Array, count: number): Uint32Array {
  let from = new Uint32Array(count);
  for (let index = 0; index < count; index++) from[index] = index;
  let to = new Uint32Array(count);
  for (let run = 1; run < count; run *= 2) {
    for (let start = 0; start < count; start += 2 * run) {
      merge(when, from, to, { start, middle: Math.min(start + run, count), end: Math.min(start + 2 * run, count) });
    }
    [from, to] = [to, from];
  }
  return from;
}

interface Runs {
  readonly start: number;
  readonly middle: number;
  readonly end: number;
}

/** Merges two sorted runs that stand side by side. */
function merge(when: Float64Array, from: Uint32Array, to: Uint32Array, { start, middle, end }: Runs): void {
  let left = start;
  let right = middle;
  for (let at = start; at < end; at++) {
    const takesLeft = left < middle && (right >= end || (when[from[left] ?? 0] ?? 0) <= (when[from[right] ?? 0] ?? 0));
    to[at] = (takesLeft ? from[left++] : from[right++]) ?? 0;
  }
}
