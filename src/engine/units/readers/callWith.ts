import type { Problem } from '../../result/problem.js';
import { ok, type Result } from '../../result/result.js';
import type { Reader } from './reader.js';

/** A reader for every argument of a formula; an argument left out of a call reads as undefined. */
export type Readers<A> = { readonly [K in keyof A]-?: Reader<A[K] | (undefined extends A[K] ? undefined : never)> };

/**
 * Calls a formula with arguments read from cells. The first argument that cannot be read ends the call; the key names it
 * in the refusal. Reading an argument as the wrong quantity, or leaving one out, does not compile.
 */
export function callWith<A extends object, T>(
  formula: (given: A) => Result<T, Problem>,
  readers: Readers<A>,
): Result<T, Problem> {
  const given: Partial<Record<keyof A, unknown>> = {};
  for (const key of Object.keys(readers) as (keyof A & string)[]) {
    const value = readers[key](fieldName(key));
    if (!value.ok) return value;
    if (value.value !== undefined) given[key] = value.value;
  }
  return formula(given as A);
}

/** `dosesADay` is "doses a day" in the contract. */
function fieldName(key: string): string {
  return key === 'pH' ? key : key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

/** A formula that has an answer to whatever its types allow, as one that may refuse. */
export function surely<A extends object, T>(formula: (given: A) => T): (given: A) => Result<T, Problem> {
  return (given) => ok(formula(given));
}
