import type { CellRange } from '../../../sheet/index.js';
import { columnOf, rowWriter } from './column.js';
import type { Part, ToneRule } from './templatePlan.js';
import { withPlaces } from './withPlaces.js';

export interface ColumnTones {
  /** Key of the column; if left out, all of them. */
  readonly on?: string;
  /** In the words of the first row: `{$Status}` is its cell, the column fixed. */
  readonly rules: readonly ToneRule[];
}

export interface Toned {
  readonly tones?: readonly ColumnTones[];
  /** A line below each row in which anything is written, or whose first column is filled. */
  readonly ruled?: 'any' | 'first';
}

/** The looks that the rows of a table take on. */
export function rowConditions(
  { tones = [], ruled }: Toned,
  rows: CellRange,
  columns: ReadonlyMap<string, number>,
): NonNullable<Part['conditions']> {
  const inRow = rowWriter(columns);
  const toned = tones.map(({ on, rules }) => ({
    range: on === undefined ? rows : columnOf(rows, columnCalled(on, columns)),
    rules: rules.map((rule) => ({ ...rule, when: inRow(rule.when, rows.firstRow) })),
  }));
  if (ruled === undefined) return toned;
  const first = { ...rows, lastRow: rows.firstRow };
  const when =
    ruled === 'any'
      ? withPlaces('COUNTA({$row})>0', () => first)
      : withPlaces('{$first}<>""', () => ({ ...first, lastColumn: first.firstColumn }));
  return [...toned, { range: rows, rules: [{ when, tone: 'row' }] }];
}

function columnCalled(key: string, columns: ReadonlyMap<string, number>): number {
  const column = columns.get(key);
  if (column === undefined) throw new Error(`there is no column ${key}`);
  return column;
}
