import type { Problem } from './problem.js';

type OutsideValidity = Extract<Problem, { readonly code: 'outside-validity' }>;

/** Conversions (°F to °C) leave dust behind the last digit: a limit is meant to include itself. */
const tolerance = 1e-9;

/** The refusal of a value outside the stated range of a formula, null where it is inside; both limits are inside. */
export function outsideValidity(value: Omit<OutsideValidity, 'code'>): OutsideValidity | null {
  const inside = value.given >= value.min - tolerance && value.given <= value.max + tolerance;
  return inside ? null : { code: 'outside-validity', ...value };
}
