import type { Problem } from './problem.js';

/** Codes that mean "nothing to answer yet" (#N/A); every other one means a bad argument (#VALUE!). */
const notYet = [
  'blank-level',
  'zero-level',
  'zero-or-untested',
  'rise-too-small',
  'readings-too-close',
  'no-reading',
  'no-hold',
  'meter-too-coarse',
] as const satisfies readonly Problem['code'][];

export function isNotYet(problem: Problem): boolean {
  const codes: readonly string[] = notYet;
  return codes.includes(problem.code);
}
