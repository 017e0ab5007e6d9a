import type { Reference, ReferenceKey } from '../references/references.js';
import type { Problem } from '../result/problem.js';
import type { Result } from '../result/result.js';

/** A published number, and how the engine computes it. */
export interface PublishedValue {
  /** What is compared, in which unit, under which conditions; a misprint is named here. */
  readonly check: string;
  /** As printed: its last place says how exact it is. */
  readonly printed: string;
  /** Allowed departure as a share of the printed number, where the source's formula does not give its own table as printed. */
  readonly within?: number;
  /** By the engine's own functions; null where they give no answer. */
  readonly computed: () => number | null;
  readonly source: {
    readonly key: ReferenceKey;
    /** Table, page or statement. */
    readonly at: string;
    /** Where it is not the reference's own. */
    readonly status?: Reference['status'];
  };
}

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
