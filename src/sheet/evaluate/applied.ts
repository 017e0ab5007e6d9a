import { errorCell, Lambda, type Value } from './value.js';

/** What a function made by LAMBDA gives for arguments; anything else cannot be called. */
export function applied(lambda: Value, given: readonly Value[]): Value {
  if (!(lambda instanceof Lambda) || given.length !== lambda.parameters.length) return errorCell('#VALUE!');
  const { scope, body, parameters } = lambda;
  const names = new Map(scope.names);
  parameters.forEach((name, i) => names.set(name, given[i] ?? null));
  return scope.evaluate(body, { ...scope, names });
}
