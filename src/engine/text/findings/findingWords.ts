import type { Finding } from '../../rules/finding.js';

/** A finding in words. */
export interface FindingWords {
  /** One sentence with the numbers of this row and, where it helps, what to do next. */
  readonly finding: string;
  /** The rule in a sentence. */
  readonly why: string;
}

/** Each code's own finding. */
export type ByFindingCode = { readonly [C in Finding['code']]: Extract<Finding, { readonly code: C }> };

/** The words of each code, written from that finding's own data. */
export type FindingSentences = { readonly [C in keyof ByFindingCode]: (finding: ByFindingCode[C]) => FindingWords };
