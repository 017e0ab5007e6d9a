import type { Hold } from '../../hold/holdTrace.js';
import type { ReadingColumns } from '../../log/readingColumns.js';

/**
 * The longest stretch between two tests of a hold.
 *
 * Definition: the largest difference of neighbouring times.
 *
 * @param readings in time order
 * @param hold readings from its first to its last
 * @returns [days]
 */
export function longestStretch({ when }: ReadingColumns, { firstIndex, lastIndex }: Hold): number {
  let longest = 0;
  for (let index = firstIndex + 1; index <= lastIndex; index++) {
    longest = Math.max(longest, (when[index] ?? NaN) - (when[index - 1] ?? NaN));
  }
  return longest;
}
