import { formulaTokens } from '../formula/formulaTokens.js';
import { isOurs } from '../formula/isOurs.js';
import { typedName } from '../formula/typedName.js';
import { formulaForms } from '../evaluate/formulaForms.js';

/** Whether a formula calls a function that is neither ours nor worked out here: the library is needed for it. */
export function callsUsual(formula: string): boolean {
  return formulaTokens(formula).some(
    ({ kind, text }) => kind === 'function' && !isOurs(text) && !formulaForms.has(typedName(text)),
  );
}
