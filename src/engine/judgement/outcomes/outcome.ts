import type { Finding } from '../../rules/finding.js';
import type { Treatment } from '../../rules/treatment.js';
import type { LastTest } from '../lastTest.js';
import type { Act } from '../task.js';

/** What a finding speaks against while it is open. */
export type Against = 'dose' | 'change water' | 'take copper out' | 'move fish';

/** What becomes of a finding: how long it is open, what it speaks against, and which row of DONOW answers it. */
export interface Outcome<F> {
  /** Whether it still is, given that its row is there; without it, for 48 h. */
  isOpen?(finding: F, treatment: Treatment, last: LastTest | null): boolean;
  /** Without it, nothing. */
  readonly against?: readonly Against[];
  /** Where it depends on what came after. */
  againstNow?(finding: F, treatment: Treatment): readonly Against[];
  /** Any of them answers it; the first is added where none is there. */
  acts(finding: F, treatment: Treatment): readonly Act[];
  /** One of `urgencies`; without it, that of the next test. */
  readonly urgency?: number;
  /** Where it depends on what was found. */
  urgencyNow?(finding: F): number;
}

/** Of dangers and warnings; verdicts and notes have none. */
export type Outcomes = {
  readonly [C in Finding['code']]?: Outcome<Extract<Finding, { readonly code: C }>>;
};
