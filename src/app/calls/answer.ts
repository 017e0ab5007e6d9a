import { type CellError, type CellValue, errorCode, isCellError } from '../../sheet/index.js';
import { HostError } from './hostError.js';

/** What a call puts into the sheet: one cell, a spilling table, or an error with the sentence the host keeps. */
export type Answer =
  | { readonly kind: 'cell'; readonly value: CellValue }
  | { readonly kind: 'table'; readonly rows: CellValue[][] }
  | { readonly kind: 'error'; readonly code: string; readonly message: string };

/** A returned value as hosts show it. They turn null, undefined and numbers without a value into 0, and a Date into text. */
export function answerOfResult(result: unknown): Answer {
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
export function answerOfThrown(thrown: unknown): Answer {
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
  if (value instanceof HostError) return cellError(value.code);
  if (value instanceof Date) return String(value);
  if (isCellError(value)) return value;
  if (typeof value === 'object' && 'basicValue' in value) return shownValue(value.basicValue);
  return cellError(errorCode.invalidValue);
}

function cellError(code: string): CellError {
  return { type: 'Error', basicValue: code };
}
