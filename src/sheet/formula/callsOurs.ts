import { formulaTokens } from './formulaTokens.js';
import { isOurs } from './isOurs.js';

/** Whether a formula calls a function of ours, as typed or as stored, in any case; a text that looks like a call is none. */
export function callsOurs(formula: string): boolean {
  // Most formulas of most books: the letters alone rule a call out.
  if (!/QT[._]/i.test(formula)) return false;
  return formulaTokens(formula).some(({ kind, text }) => kind === 'function' && isOurs(text));
}
