import type { Problem } from '../../result/problem.js';
import { ok, type Result } from '../../result/result.js';
import { isBlank, type Cell } from '../cell.js';

/** Reads one argument; the field's name, for a refusal, comes from the call. */
export type Reader<T> = (field: string) => Result<T, Problem>;

/** The fallback where the cell is blank, else what the reader makes of it. */
export function optionally<T, F>(cell: Cell, read: (cell: Cell) => Reader<T>, fallback: F): Reader<T | F> {
  return isBlank(cell) ? always(fallback) : read(cell);
}

/** As `optionally`; a bare 0, which some hosts send for an empty cell, counts as omitted: for times, gaps and numbers of days. */
export function unlessBlankOrZero<T, F>(cell: Cell, read: (cell: Cell) => Reader<T>, fallback: F): Reader<T | F> {
  return cell === 0 || (typeof cell === 'string' && cell.trim() === '0')
    ? always(fallback)
    : optionally(cell, read, fallback);
}

/** A reader whose argument has another name in the contract than in the formula. */
export function named<T>(field: string, read: Reader<T>): Reader<T> {
  return () => read(field);
}

function always<T>(value: T): Reader<T> {
  return () => ok(value);
}
