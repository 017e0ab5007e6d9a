import type { Cell } from '../../units/cell.js';
import { isBlank } from '../../units/cell.js';
import type { ColumnKind } from '../headings/columnKinds.js';
import type { HeadingRead } from '../headings/readHeadings.js';
import type { LogRange } from './logRange.js';

const textKinds: ReadonlySet<ColumnKind> = new Set<ColumnKind>([
  'signs',
  'note',
  'flukes',
  'system',
  'lot',
  'who',
  'fish in',
  'fish out',
  'dead',
]);

/**
 * The log with its bare zeros as blanks, where they are blanks: some hosts hand over an empty cell as 0.
 *
 * Definition: no cell below the headings is blank, and a column of texts holds a bare 0 beside texts.
 */
export function zerosAsBlanks(log: LogRange, headingRow: number, headings: readonly HeadingRead[]): LogRange {
  const { range, cellOf } = log;
  const rows = range.slice(headingRow + 1);
  if (
    rows.some((row) =>
      row.some((raw) => raw === null || raw === '' || (typeof raw !== 'number' && isBlank(cellOf(raw)))),
    )
  )
    return log;
  const holdsZeros = headings.some(
    ({ words, column }) =>
      words !== null && textKinds.has(words.kind) && hasZerosAmongTexts(rows.map((row) => cellOf(row[column]))),
  );
  if (!holdsZeros) return log;
  return { ...log, range: range.map((row) => row.map((raw) => (raw === 0 ? null : raw))) };
}

/** A number other than 0 beside them makes the zeros counts. */
function hasZerosAmongTexts(cells: readonly Cell[]): boolean {
  const hasTexts = cells.some((cell) => typeof cell === 'string');
  return hasTexts && cells.includes(0) && cells.every((cell) => typeof cell === 'string' || cell === 0);
}
