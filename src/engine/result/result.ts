/** What a formula gives: a value, or the reason why there is none. Nothing below the shells throws for a bad argument. */
export type Result<T, P> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: P };

export function ok<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value };
}

export function refuse<P>(problem: P): { readonly ok: false; readonly problem: P } {
  return { ok: false, problem };
}
