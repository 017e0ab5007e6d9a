import type { PlanAction } from '../../plan/planStep.js';

/** What to do, and why with its source. */
export interface PlanText {
  readonly doing: string;
  readonly why: string;
}

/** The actions of a union that may have this code. */
type WithCode<A, C> = A extends { readonly code: infer K } ? (C extends K ? A : never) : never;

/** Each code's own action. */
export type ByCode = { readonly [C in PlanAction['code']]: WithCode<PlanAction, C> };

/** Two sentences for each step of a plan. */
export type PlanTexts = { readonly [C in keyof ByCode]: (action: ByCode[C]) => PlanText };
