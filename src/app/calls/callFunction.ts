import { type Answer, type CellValue, errorCell, errorCode, type Given, isCellError } from '../../sheet/index.js';
import { argumentValues } from './argumentValues.js';
import { HostError, type Implementation } from './customFunctions.js';
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

/** A returned value as hosts show it. They turn null, undefined and numbers without a value into 0, and a Date into text. */
function answerOfResult(result: unknown): Answer {
  if (!Array.isArray(result)) {
    const value = shownValue(result);
    return isCellError(value)
      ? { kind: 'error', code: value.basicValue, message: messageOf(result) }
      : { kind: 'cell', value };
  }
  const width = Array.isArray(result[0]) ? result[0].length : 0;
  if (width === 0 || !result.every((row) => Array.isArray(row) && row.length === width)) {
    return { kind: 'error', code: errorCode.invalidValue, message: '' };
  }
  return { kind: 'table', rows: result.map((row: unknown[]) => row.map(shownValue)) };
}

/** A thrown value as hosts show it: only `#VALUE!` and `#N/A` keep their sentence, any other Error is a bare `#VALUE!`. */
function answerOfThrown(thrown: unknown): Answer {
  if (!(thrown instanceof HostError)) return { kind: 'error', code: errorCode.invalidValue, message: '' };
  return { kind: 'error', code: thrown.code, message: messageOf(thrown) };
}

function messageOf(value: unknown): string {
  if (!(value instanceof HostError)) return '';
  return value.code === errorCode.invalidValue || value.code === errorCode.notAvailable ? value.message : '';
}

function shownValue(value: unknown): CellValue {
  if (typeof value === 'number') return Number.isFinite(value) ? value : 0;
  if (typeof value === 'string' || typeof value === 'boolean') return value;
  if (value === null || value === undefined) return 0;
  if (value instanceof HostError) return errorCell(value.code);
  if (value instanceof Date) return String(value);
  if (isCellError(value)) return value;
  if (typeof value === 'object' && 'basicValue' in value) return shownValue(value.basicValue);
  return errorCell(errorCode.invalidValue);
}
