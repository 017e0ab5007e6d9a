import type { Token } from './token.js';

/** Where the bracket at a place is closed; the number of tokens where it is not. */
export function closingAt(tokens: readonly Token[], open: number): number {
  let depth = 0;
  for (let i = open; i < tokens.length; i += 1) {
    if (tokens[i]?.kind === 'open') depth += 1;
    else if (tokens[i]?.kind === 'close') depth -= 1;
    if (depth === 0) return i;
  }
  return tokens.length;
}
