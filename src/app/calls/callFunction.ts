import { answerOfResult, answerOfThrown, type Answer } from './answer.js';
import { argumentValues } from './argumentValues.js';
import { errorCode, type Given } from '../../sheet/index.js';
import type { Implementation } from './customFunctions.js';
import { cellName, type FunctionEntry } from './functionCatalogue.js';

interface Call {
  readonly entry: FunctionEntry;
  readonly implementation: Implementation;
  readonly given: readonly Given[];
  readonly allowErrors: boolean;
  /** The calling cell, such as `Log!H4`. */
  readonly address: string;
}

/** One call of a bundled function, from the arguments of a formula to what its cell shows. Never throws. */
export function callFunction({ entry, implementation, given, allowErrors, address }: Call): Answer {
  const taken = argumentValues(entry, given, allowErrors);
  if ('miscounted' in taken) {
    return { kind: 'error', code: errorCode.invalidValue, message: `${cellName(entry)} ${taken.miscounted}` };
  }
  if ('error' in taken) return { kind: 'error', code: taken.error.basicValue, message: '' };
  const invocation = { functionName: entry.id, ...(entry.options?.requiresAddress === true ? { address } : {}) };
  try {
    return answerOfResult(implementation(...taken.values, invocation));
  } catch (thrown) {
    return answerOfThrown(thrown);
  }
}
