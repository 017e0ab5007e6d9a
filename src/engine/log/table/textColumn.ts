import type { Cell } from '../../units/cell.js';
import { headingKey } from '../headings/columnKinds.js';
import type { HeadingRead } from '../headings/readHeadings.js';
import type { ReadRows } from './timedRows.js';

/** A column of text, or several of one kind with a row's cells joined; null where the log has none. */
export function textColumn(
  { log, rows, faults }: ReadRows,
  headings: readonly HeadingRead[],
): readonly string[] | null {
  if (headings.length === 0) return null;
  const texts = new Array<string>(rows.count).fill('');
  for (const heading of headings) {
    const answersEating = /\b(?:eating|feed(?:ing)?)\b/.test(headingKey(heading.text));
    for (let index = 0; index < rows.count; index++) {
      const row = rows.row[index] ?? 0;
      const raw = log.range[row - log.firstRow]?.[heading.column];
      if (raw === null || raw === undefined || raw === '') continue;
      const cell = log.cellOf(raw);
      if (typeof cell === 'object' && cell !== null && 'error' in cell) {
        const problem = { code: 'error-cell', at: { row }, given: cell.error } as const;
        faults.push({ row, kind: heading.words?.kind ?? 'note', problem, when: rows.when[index] ?? NaN });
        continue;
      }
      const text = answersEating ? eatingText(cell) : plainText(cell);
      if (text !== '') texts[index] = texts[index] === '' ? text : `${texts[index] ?? ''}; ${text}`;
    }
  }
  return texts;
}

function plainText(cell: Cell): string {
  return typeof cell === 'string'
    ? cell.trim()
    : typeof cell === 'number'
      ? String(cell)
      : typeof cell === 'boolean'
        ? cell
          ? 'yes'
          : 'no'
        : '';
}

/** "Eating?" answered by yes or no. */
function eatingText(cell: Cell): string {
  const text = plainText(cell);
  if (text.length > 3) return text;
  if (/^(?:y|yes)$/i.test(text)) return 'eating';
  return /^(?:n|no)$/i.test(text) ? 'not eating' : text;
}
