import { columnKinds, headingKey, type ColumnKind } from '../../engine/index.js';

/** What else is tested in sea water, in the same units. */
const otherTests =
  /\b(?:nitrates?|nitrites?|no[23]|phosphates?|po4|alk(?:alinity)?|kh|dkh|calcium|magnesium|iodine|oxygen|o2|orp|salinity)\b/;

/** What a column with this heading is read as in a log; null: nothing known. A test of something else is no copper. */
export function columnKindOf(text: string): ColumnKind | null {
  const key = headingKey(text);
  const kind = columnKinds.find(({ words }) => words.test(key))?.kind ?? null;
  return kind === 'copper' && otherTests.test(key) ? null : kind;
}
