import type { Problem } from '../../result/problem.js';
import { ok, type Result } from '../../result/result.js';
import { isBlank, type Cell } from '../cell.js';

/** Reads one argument; the field's name, for a refusal, comes from the call. */
export type Reader<T> = (field: string) => Result<T, Problem>;

/** The fallback where the cell is blank or a bare 0, which some hosts send for an empty cell; else what the reader makes of it. */
export function unlessBlankOrZero<T, F>(cell: Cell, read: (cell: Cell) => Reader<T>, fallback: F): Reader<T | F> {
  const isZero = cell === 0 || (typeof cell === 'string' && cell.trim() === '0');
  return isZero || isBlank(cell) ? always(fallback) : read(cell);
}

/** A reader whose argument has another name in the contract than in the formula. */
export function named<T>(field: string, read: Reader<T>): Reader<T> {
  return () => read(field);
}

function always<T>(value: T): Reader<T> {
  return () => ok(value);
}
