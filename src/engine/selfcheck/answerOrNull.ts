import type { Problem } from '../result/problem.js';
import type { Result } from '../result/result.js';

/**
 * What a formula answered, or null: a refusal agrees with no published value.
 *
 * Definition: the value of an answer, null for a problem.
 *
 * @param result what the formula gave
 * @returns the number, or null
 * @example answerOrNull(ok(30)) // = 30
 */
export function answerOrNull(result: Result<number, Problem>): number | null {
  return result.ok ? result.value : null;
}
