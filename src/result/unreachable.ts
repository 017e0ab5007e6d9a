/** A state that the types rule out: our own fault, so it throws. */
export function unreachable(value: never): never {
  throw new Error(`unreachable state: ${JSON.stringify(value)}`);
}
