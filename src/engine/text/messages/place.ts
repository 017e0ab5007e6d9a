import type { Place } from '../../result/problem.js';

/** How a sentence begins: `row 12:` for a cell of a range, the argument's name for an argument. */
export function place(at: Place): string {
  return 'row' in at ? `row ${at.row}:` : at.field;
}
