import { refuse, type Cell, type Problem, type Reader, type Result } from '../src/engine/index.js';
import { cellOf } from './cellOf.js';

/**
 * An answer that hangs on a test, unless the test is a bare 0, which some hosts send for an empty cell. Faults of the
 * other arguments come first.
 */
export function unlessZero<T>(field: string, test: unknown, answer: Result<T, Problem>): Result<T, Problem> {
  return answer.ok && cellOf(test) === 0 ? refuse({ code: 'zero-level', field }) : answer;
}

/** A test without which nothing can be worked out; as above. Its place among the arguments is the last. */
export function notZero<T>(test: unknown, read: (cell: Cell) => Reader<T>): Reader<T> {
  return (field) => (cellOf(test) === 0 ? refuse({ code: 'zero-level', field }) : read(cellOf(test))(field));
}
