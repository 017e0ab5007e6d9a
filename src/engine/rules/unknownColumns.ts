import { shown } from '../units/shown.js';
import { daily, type Found, type FindingWords, type Rule } from './rule.js';
import type { Treatment } from './treatment.js';

interface UnknownColumns {
  readonly code: 'verdict-columns';
  /** Their headings as written; '' where there is none. */
  readonly headings: readonly string[];
  /** The n-th columns of the range. */
  readonly columns: readonly number[];
}

/** What stands in a column under a heading nobody knows is not judged, and the reader of a verdict must know that. */
export const unknownColumns: Rule<UnknownColumns> = {
  about: 'columns with content whose heading is unknown',
  codes: { 'verdict-columns': ['verdict'] },
  sources: ['Practice'],
  needs: [],
  yieldsTo: [],
  find,
  words,
  examples: [
    { log: daily('Cu|Phase of the moon', '2.25|full'), finds: ['verdict - verdict-columns'] },
    { log: daily('Cu|Phase of the moon', '2.25|'), finds: [] },
  ],
};

function find({ log: { unread } }: Treatment): readonly Found<UnknownColumns>[] {
  if (unread.length === 0) return [];
  const headings = unread.map(({ text }) => text);
  const columns = unread.map(({ column }) => column + 1);
  return [
    { code: 'verdict-columns', severity: 'verdict', when: null, row: null, source: 'Practice', headings, columns },
  ];
}

function words({ headings, columns }: UnknownColumns): FindingWords {
  const named = headings.map((heading, at) => (heading === '' ? `column ${columns[at] ?? 0}` : shown(heading)));
  const some = named.length > 4 ? [...named.slice(0, 4), 'others'] : named;
  return {
    finding: `${named.length} ${named.length === 1 ? 'column is' : 'columns are'} not read: ${some.join(', ')}.`,
    why: 'A heading says what its column is; what stands under one that is not known was not judged. See QT.HEADINGS.',
  };
}
