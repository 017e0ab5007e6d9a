import type { Problem } from '../../result/problem.js';
import { ok, type Result } from '../../result/result.js';
import type { Reader } from './reader.js';

type Readers = Readonly<Record<string, Reader<unknown>>>;
type ValueOf<R> = R extends Reader<infer T> ? T : never;
type OptionalKeys<R> = { [K in keyof R]: undefined extends ValueOf<R[K]> ? K : never }[keyof R];

/** The values of some readers; one that may read as undefined is then left out. */
type Arguments<R> = { readonly [K in Exclude<keyof R, OptionalKeys<R>>]: ValueOf<R[K]> } & {
  readonly [K in OptionalKeys<R>]?: Exclude<ValueOf<R[K]>, undefined>;
};

/**
 * Arguments read from cells, as one value for a formula. The first that cannot be read is the refusal; its key names it
 * there. Reading an argument as the wrong quantity, or leaving one out, does not fit the formula's type.
 */
export function argumentsIn<R extends Readers>(readers: R): Result<Arguments<R>, Problem> {
  const given: Record<string, unknown> = {};
  for (const key of Object.keys(readers)) {
    const value = readers[key]?.(fieldName(key));
    if (value === undefined) continue;
    if (!value.ok) return value;
    if (value.value !== undefined) given[key] = value.value;
  }
  return ok(given as Arguments<R>);
}

/** `dosesADay` is "doses a day" in the contract. */
function fieldName(key: string): string {
  return key === 'pH' ? key : key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}
