import { addressOf } from '../../../sheet/index.js';
import type { Condition, SheetPlan, Tab } from '../templatePlan.js';

/** A column of a table that one formula spills. */
export interface SpillColumn {
  readonly width: number;
  readonly isNumber?: boolean;
  readonly format?: string;
  readonly wraps?: boolean;
}

interface TableTerms {
  readonly name: string;
  readonly tab?: Tab;
  readonly title: string;
  readonly lead: string;
  readonly formula: string;
  readonly columns: readonly SpillColumn[];
  /** How many rows are made ready for the answer. */
  readonly rows: number;
  /** Of its rows, in points. */
  readonly height?: number;
  readonly headingHeight?: number;
  readonly conditions?: (first: number, last: number) => readonly Condition[];
  readonly orientation: 'portrait' | 'landscape';
}

const headingRow = 4;

/** A sheet of one table, which one formula in A4 fills. */
export function tableSheet(terms: TableTerms): SheetPlan {
  const { name, title, lead, formula, columns, rows, height, orientation } = terms;
  const [first, last] = [headingRow + 1, headingRow + rows];
  const end = addressOf(0, columns.length - 1).replace('1', '');
  const range = (at: number): string => `${addressOf(first - 1, at)}:${addressOf(last - 1, at)}`;
  return {
    name,
    tab: terms.tab ?? 'answer',
    widths: columns.map(({ width }) => width),
    heights: [
      { rows: [1, 1], height: 28 },
      { rows: [headingRow, headingRow], height: terms.headingHeight ?? 20 },
      ...(height === undefined ? [] : [{ rows: [first, last] as const, height }]),
    ],
    frozen: { rows: headingRow },
    blocks: [
      { at: 'A1', cells: [[title]] },
      { at: 'A2', cells: [[lead]] },
      { at: `A${headingRow}`, cells: [[formula]] },
    ],
    looks: [
      { range: `A1:${end}1`, look: 'title' },
      { range: `A2:${end}2`, look: 'note' },
      ...columns.flatMap((column, at) => columnLooks(column, addressOf(headingRow - 1, at), range(at))),
    ],
    formats: columns.flatMap(({ format }, at) => (format === undefined ? [] : [{ range: range(at), format }])),
    merged: [`A2:${end}2`],
    conditions: [
      ...(terms.conditions?.(first, last) ?? []),
      { range: `A${first}:${end}${last}`, rules: [{ when: `$A${first}<>""`, tone: 'row' }] },
    ],
    page: { orientation, repeated: `${headingRow}:${headingRow}` },
  };
}

function columnLooks(
  { isNumber = false, wraps = false }: SpillColumn,
  heading: string,
  range: string,
): SheetPlan['looks'] {
  return [
    { range: heading, look: isNumber ? 'numberHeading' : 'heading' },
    { range, look: wraps ? 'spillText' : isNumber ? 'spillNumber' : 'spill' },
  ];
}
