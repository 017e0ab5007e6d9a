import { formulaTokens } from '../formula/formulaTokens.js';
import { typedName } from '../formula/typedName.js';

/** Whether a formula asks for the present moment or day. */
export function tellsTime(formula: string): boolean {
  if (!/NOW|TODAY/i.test(formula)) return false;
  return formulaTokens(formula).some(
    ({ kind, text }) => kind === 'function' && ['NOW', 'TODAY'].includes(typedName(text)),
  );
}
