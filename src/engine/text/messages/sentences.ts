import type { Problem } from '../../result/problem.js';

/** Each code's own problem. */
export type ByCode = { readonly [C in Problem['code']]: Extract<Problem, { readonly code: C }> };

/** One sentence for each code, written from that problem's own data. */
export type Sentences = { readonly [C in keyof ByCode]: (problem: ByCode[C]) => string };
