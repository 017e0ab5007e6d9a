import { parseFormula } from './formula/parseFormula.js';
import type { Answer } from './answer.js';
import type { BundledFunction } from './bundledFunction.js';
import { callFunction } from './callFunction.js';
import { cellName } from './functionCatalogue.js';

import {
  callsUsual,
  errorCode,
  formulaTokens,
  isOurs,
  loadedLibrary,
  parsedFormula,
  typedName,
  UnreadableFormula,
} from '../../sheet/index.js';
import { looseAnswer } from './looseAnswer.js';

/**
 * What a cell with a formula would show, without a sheet around it. A call of ours with its arguments written out is made at
 * once; for more the usual functions are loaded.
 */
export async function formulaAnswer(typed: string, bundle: readonly BundledFunction[], now: number): Promise<Answer> {
  const call = parseFormula(typed);
  const bundled = call.ok ? bundle.find(({ entry }) => entry.id === call.value.name) : undefined;
  if (call.ok && bundled !== undefined) return callFunction({ ...bundled, given: call.value.given, address: '' });
  const formula = typed.replace(/^\s*=/, '');
  if (formula.trim() === '') return refused(errorCode.invalidName, 'write a formula, such as =QT.BAND("chelated")');
  const tokens = formulaTokens(formula);
  const cell = tokens.find(({ kind }) => kind === 'reference' || kind === 'table' || kind === 'outside');
  if (cell !== undefined) {
    return refused(errorCode.invalidReference, `there is no sheet to look for ${cell.text} in; write the value itself`);
  }
  const unknown = tokens
    .filter(({ kind, text }) => kind === 'function' && isOurs(text))
    .map(({ text }) => typedName(text))
    .find((name) => !bundle.some(({ entry }) => cellName(entry) === name));
  if (unknown !== undefined) return refused(errorCode.invalidName, `there is no function ${unknown}`);
  try {
    const node = parsedFormula(formula);
    const library = callsUsual(formula) ? await loadedLibrary() : undefined;
    return looseAnswer(node, { bundle, library, now });
  } catch (fault) {
    if (!(fault instanceof UnreadableFormula)) throw fault;
    return refused(errorCode.invalidName, `the formula ${fault.message}`);
  }
}

function refused(code: string, message: string): Answer {
  return { kind: 'error', code, message };
}
