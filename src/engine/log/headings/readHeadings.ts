import type { Problem } from '../../result/problem.js';
import { ok, refuse, type Result } from '../../result/result.js';
import { shown } from '../../units/shown.js';
import { columnKinds, headingKey, type ColumnKind, type ColumnWords } from './columnKinds.js';
import { headingUnit } from './headingUnit.js';

/** A heading and how it was understood. */
export interface HeadingRead {
  /** The n-th column of the range, from 0. */
  readonly column: number;
  readonly text: string;
  /** null: no word in it is known. */
  readonly words: ColumnWords | null;
  /** Key in the table of units, null where the heading names none. */
  readonly unit: string | null;
}

/**
 * Reads a row of headings; two for one thing are refused with both, but a date and its time of day make one time. Of a
 * bare "Added" only what stands below says whether it is copper or fish: `holdsAmounts` looks there.
 */
export function readHeadings(
  texts: readonly string[],
  holdsAmounts: (column: number) => boolean,
): Result<readonly HeadingRead[], Problem> {
  const read: HeadingRead[] = [];
  for (const [column, text] of texts.entries()) {
    const words = wordsFor(headingKey(text) === 'added' && holdsAmounts(column) ? 'added ml' : text);
    const unit = words === null ? ok(null) : headingUnit(text, words);
    if (!unit.ok) return unit;
    read.push({ column, text, words, unit: unit.value });
  }
  for (const { kind, joins } of columnKinds) {
    if (joins === true) continue;
    const [first, second, third] = read.filter((heading) => heading.words?.kind === kind);
    if (first === undefined || second === undefined) continue;
    if (kind === 'time' && third === undefined && isTimeOfDay(first) !== isTimeOfDay(second)) continue;
    return refuse({ code: 'two-headings', kind, first: shown(first.text), second: shown(second.text) });
  }
  return ok(read);
}

/** The headings read as one kind, in the order in which they stand; of the times, the date first. */
export function headingsOf(read: readonly HeadingRead[], kind: ColumnKind): readonly HeadingRead[] {
  const found = read.filter((heading) => heading.words?.kind === kind);
  return kind === 'time' ? [...found].sort((a, b) => Number(isTimeOfDay(a)) - Number(isTimeOfDay(b))) : found;
}

function wordsFor(text: string): ColumnWords | null {
  const key = headingKey(text);
  return columnKinds.find(({ words }) => words.test(key)) ?? null;
}

/** "Time" beside "Date" is the time of day. */
function isTimeOfDay({ text }: HeadingRead): boolean {
  const key = headingKey(text);
  return /\btimes?\b/.test(key) && !/\bdate\b/.test(key);
}
