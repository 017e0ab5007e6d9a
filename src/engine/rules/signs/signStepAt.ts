import type { SignRow, SignStep } from './signSteps.js';

const known = new WeakMap<readonly SignRow[], readonly SignRow[]>();

/** The step that the last text understood by a moment asks for; '' where none does. */
export function signStepAt(signs: readonly SignRow[], when: number): SignStep {
  const read = readRows(signs);
  let first = 0;
  let after = read.length;
  while (first < after) {
    const middle = (first + after) >>> 1;
    if ((read[middle]?.when ?? Infinity) <= when) first = middle + 1;
    else after = middle;
  }
  return read[first - 1]?.step ?? '';
}

/** The question comes once for each water change: what is left out is left out once. */
function readRows(signs: readonly SignRow[]): readonly SignRow[] {
  const before = known.get(signs);
  if (before !== undefined) return before;
  const read = signs.filter(({ step }) => step !== 'unread');
  known.set(signs, read);
  return read;
}
