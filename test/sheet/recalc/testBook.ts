import { resolve } from 'node:path';
import { cellRange } from '../../../src/sheet/address/cellRange';
import { addressOf } from '../../../src/sheet/address/addressOf';
import { outsideFunctions } from '../../../src/app/calls/outsideFunctions';
import { nodeBundle } from '../../../src/app/cli/files/nodeBundle';
import { isCellError, type CellValue } from '../../../src/sheet/cell/cellValue';
import type { CellAnswer } from '../../../src/sheet/recalc/cellAnswers';
import { evaluatedBook } from '../../../src/sheet/recalc/evaluatedBook';
import type { Book, BookCell, BookSheet, BookTable, DefinedName } from '../../../src/sheet/book/book';

/** What a cell of a test book holds: a value, or a formula with its stored value and the cells that it fills. */
export type TestCell =
  | CellValue
  | {
      readonly formula: string;
      readonly value?: CellValue;
      readonly fills?: string;
      readonly dynamic?: boolean;
      readonly format?: string;
    };

export interface TestSheet {
  readonly cells: Readonly<Record<string, TestCell>>;
  readonly merged?: readonly string[];
}

export const error = (basicValue: string): CellValue => ({ type: 'Error', basicValue });

export const bundle = nodeBundle(resolve('dist')).functions;

export const outside = outsideFunctions(bundle);

export function testBook(
  sheets: Readonly<Record<string, TestSheet['cells'] | TestSheet>>,
  more: {
    readonly names?: readonly DefinedName[];
    readonly tables?: readonly BookTable[];
    readonly date1904?: boolean;
  } = {},
): Book {
  return {
    kind: 'xlsx',
    sheets: Object.entries(sheets).map(([name, sheet]) =>
      bookSheet(name, isTestSheet(sheet) ? sheet : { cells: sheet }),
    ),
    names: more.names ?? [],
    tables: more.tables ?? [],
    date1904: more.date1904 ?? false,
    remarks: [],
  };
}

function isTestSheet(sheet: TestSheet['cells'] | TestSheet): sheet is TestSheet {
  return 'cells' in sheet;
}

function bookSheet(name: string, { cells, merged = [] }: TestSheet): BookSheet {
  const rows: (BookCell | undefined)[][] = [];
  for (const [address, cell] of Object.entries(cells)) {
    const { firstRow, firstColumn } = cellRange(address);
    (rows[firstRow] ??= [])[firstColumn] = bookCell(cell);
  }
  return { name, hidden: false, rows, merged: merged.map(cellRange), widths: [] };
}

function bookCell(cell: TestCell): BookCell {
  if (typeof cell !== 'object' || cell === null || isCellError(cell)) return { value: cell };
  const { formula, value = null, fills, dynamic, format } = cell;
  return {
    value,
    formula,
    ...(fills === undefined ? {} : { fills: cellRange(fills) }),
    ...(dynamic === undefined ? {} : { dynamic }),
    ...(format === undefined ? {} : { format }),
  };
}

/** Answers by address, such as `Log!H4`; errors as their code. */
export async function answersOf(
  book: Book,
  terms: Partial<Parameters<typeof evaluatedBook>[2]> = {},
): Promise<Record<string, unknown>> {
  const answers = await evaluatedBook(book, outside, { now: 46_100.5, ...terms });
  return Object.fromEntries(answers.map((answer) => [addressIn(answer), shown(answer.value)]));
}

/** What one formula gives in cell Z1 of a book with these cells on its sheet `Log`. */
export async function formulaGives(
  formula: string,
  cells: Readonly<Record<string, TestCell>> = {},
  more: Parameters<typeof testBook>[1] & { readonly sheets?: Readonly<Record<string, TestSheet['cells']>> } = {},
): Promise<unknown> {
  const asked: TestCell = { formula, dynamic: true, fills: 'Z1:Z1' };
  const book = testBook({ Log: { ...cells, Z1: asked }, ...more.sheets }, more);
  const answers = (await evaluatedBook(book, outside, { now: 46_100.5, all: true })).filter(
    ({ sheet, row, column }) => sheet === 'Log' && row < 1000 && column >= 25,
  );
  const kept = answers.find(({ isKept }) => isKept === true);
  if (kept !== undefined) return `kept: ${kept.reason ?? ''}`;
  const rows: unknown[][] = [];
  for (const { row, column, value } of answers) (rows[row] ??= [])[column - 25] = shown(value);
  return rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows;
}

export function addressIn({ sheet, row, column }: CellAnswer): string {
  return `${sheet}!${addressOf(row, column)}`;
}

export function shown(value: CellValue): unknown {
  return isCellError(value) ? value.basicValue : value;
}
