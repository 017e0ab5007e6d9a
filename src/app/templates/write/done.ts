/** The answer of the writer; a refusal of its is a fault in a plan of ours. */
export function done<T extends { readonly error: string | null }>(answer: T, what: string): T {
  if (answer.error !== null) throw new Error(`${what}: ${answer.error}`);
  return answer;
}
