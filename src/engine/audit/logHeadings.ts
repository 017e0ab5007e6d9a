import type { HeadingRead } from '../log/headings/readHeadings.js';
import { headingRowOf, headingsIn, type LogRange } from '../log/table/logRange.js';
import type { Problem } from '../result/problem.js';
import { refuse, type Result } from '../result/result.js';

/** The headings of a log as they are understood; a range without a single known one has no heading row. */
export function logHeadings(log: LogRange): Result<readonly HeadingRead[], Problem> {
  const read = headingsIn(log, headingRowOf(log));
  const isKnown = !read.ok || read.value.some(({ words }) => words !== null);
  return isKnown ? read : refuse({ code: 'missing-heading', kind: 'time' });
}
