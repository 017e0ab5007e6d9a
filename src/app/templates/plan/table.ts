import { type CellRange, oneCell } from '../../../sheet/index.js';
import { bodies, columnOf, columnPart, rowWriter, type Body, type InRow, type TableColumn } from './column.js';

import { cornerOf } from './line.js';
import { rowConditions, type Toned } from './rowConditions.js';
import type { Content, Corner, Part, PlannedCell } from './templatePlan.js';

export interface TableTerms extends Toned {
  /** The corner of its heading; if left out, right beside another table, as part of it. */
  readonly at?: string | Corner;
  readonly beside?: TablePart;
  /** What its places begin with: `{key}`, `{key.column}`, with their headings `{key+}`, `{key.column+}`. */
  readonly key: string;
  readonly columns: readonly TableColumn[];
  /** One formula in the corner that fills all of it, headings among them. */
  readonly formula?: string;
  /** Its cells, columns with a formula left out. */
  readonly rows?: readonly (readonly Content[])[];
  /** Formulas in the first row of a column that fill the cells below, and beside. */
  readonly arrays?: readonly { readonly on: string; readonly formula: string }[];
  /** How many rows are made ready. */
  readonly room: number;
  /** If left out, bare. */
  readonly body?: Body;
  readonly headings?: Body;
  /** As a table of the workbook with this name. */
  readonly name?: string;
  /** Of its rows, and of its heading, in points. */
  readonly height?: number;
  readonly headingHeight?: number;
}

export interface TablePart extends Part {
  readonly heading: number;
  /** Columns by key. */
  readonly columns: ReadonlyMap<string, number>;
  readonly firstColumn: number;
  readonly lastColumn: number;
}

/** Columns with headings, and rows below them; each column says what it holds. */
export function table(terms: TableTerms): TablePart {
  const { beside, key, columns, room, name } = terms;
  const at = cornerOf(terms.at ?? { row: beside?.heading ?? 0, column: (beside?.lastColumn ?? -1) + 1 });
  const placed = new Map(columns.map((column, i) => [column.key ?? column.heading, at.column + i]));
  const known = new Map([...(beside?.columns ?? []), ...placed]);
  const inRow = rowWriter(known);
  const lastColumn = at.column + columns.length - 1;
  const own = { firstRow: at.row + 1, lastRow: at.row + room, firstColumn: at.column, lastColumn };
  const whole = { ...own, firstRow: at.row };
  const { body = bodies.plain, headings = { text: 'heading', number: 'numberHeading' } } = terms;
  const parts = columns.map((column, i) => {
    const cells = columnOf(own, at.column + i);
    return columnPart(column, { at: { row: at.row, column: at.column + i }, cells, body, headings, inRow });
  });
  return {
    heading: at.row,
    firstColumn: beside?.firstColumn ?? at.column,
    columns: known,
    lastColumn,
    cells:
      terms.formula === undefined ? cellsOf(terms, own, inRow) : [{ ...at, content: terms.formula, isArray: true }],
    areas: parts.flatMap(({ areas = [] }) => areas),
    places: placesOf(key, placed, whole),
    widths: parts.flatMap(({ widths = [] }) => widths),
    heights: heightsOf(terms, own),
    ...(name === undefined ? {} : { table: { name, range: whole } }),
    validations: parts.flatMap(({ validations = [] }) => validations),
    conditions: rowConditions(terms, { ...own, firstColumn: beside?.firstColumn ?? at.column }, known),
  };
}

function cellsOf({ columns, rows = [], arrays = [], room }: TableTerms, own: CellRange, inRow: InRow): PlannedCell[] {
  const cells: PlannedCell[] = [];
  const put = (row: number, at: number, content: Content, isArray = false): void => {
    if (content === null || content === '') return;
    cells.push({ row, column: own.firstColumn + at, content, ...(isArray ? { isArray } : {}) });
  };
  columns.forEach(({ heading, headingNumber }, at) => put(own.firstRow - 1, at, headingNumber ?? heading));
  for (let r = 0; r < (rows.length === 0 ? room : rows.length); r++) {
    const written = [...(rows[r] ?? [])];
    const row = own.firstRow + r;
    columns.forEach(({ formula }, at) => {
      put(row, at, formula === undefined ? (written.shift() ?? null) : inRow(formula, row));
    });
  }
  for (const { on, formula } of arrays) {
    const at = columns.findIndex(({ key, heading }) => (key ?? heading) === on);
    put(own.firstRow, at, formula, true);
  }
  return cells;
}

function placesOf(key: string, columns: ReadonlyMap<string, number>, all: CellRange): NonNullable<Part['places']> {
  const rows = { ...all, firstRow: all.firstRow + 1 };
  const places = [...columns].flatMap(([name, column]): [string, CellRange][] => [
    [`${key}.${name}`, columnOf(rows, column)],
    [`${key}.${name}+`, columnOf(all, column)],
    [`${key}.${name} heading`, oneCell({ row: all.firstRow, column })],
    [`${key}.${name} first`, oneCell({ row: rows.firstRow, column })],
  ]);
  const headings = { ...all, lastRow: all.firstRow };
  return { [key]: rows, [`${key}+`]: all, [`${key} headings`]: headings, ...Object.fromEntries(places) };
}

function heightsOf({ height, headingHeight }: TableTerms, own: CellRange): NonNullable<Part['heights']> {
  const heading = own.firstRow - 1;
  return [
    ...(headingHeight === undefined ? [] : [{ first: heading, last: heading, height: headingHeight }]),
    ...(height === undefined ? [] : [{ first: own.firstRow, last: own.lastRow, height }]),
  ];
}
