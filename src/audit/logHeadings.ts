import { readHeadings, type HeadingRead } from '../log/headings/readHeadings.js';
import { headingRowOf, headingTexts, type LogRange } from '../log/table/logRange.js';
import type { Problem } from '../result/problem.js';
import type { Result } from '../result/result.js';

/** The headings of a log as they are understood. */
export function logHeadings(log: LogRange): Result<readonly HeadingRead[], Problem> {
  return readHeadings(headingTexts(log, headingRowOf(log)));
}
