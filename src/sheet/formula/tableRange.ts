import type { CellRange } from '../address/cellRange.js';
import type { BookTable } from '../book/book.js';
import type { StructuredReference, TablePart } from './structuredReference.js';

/**
 * The cells that a part of a table means to a formula in a row.
 * @returns or the error that a cell shows: `#REF!` for a part that the table lacks, `#VALUE!` for "this row" outside it
 */
export function tableRange(
  table: BookTable,
  reference: StructuredReference,
  row: number,
): CellRange | '#REF!' | '#VALUE!' {
  const columns = columnsOf(table, reference.columns);
  const spans = (reference.parts.length === 0 ? (['#Data'] as const) : reference.parts).map((part) =>
    rowsOf(table, part, row),
  );
  if (columns === undefined || spans.some((span) => span === undefined)) return '#REF!';
  const rows = spans.filter((span) => span !== undefined);
  if (rows.some((span) => span === 'elsewhere')) return '#VALUE!';
  const both = rows.filter((span) => span !== 'elsewhere');
  return {
    firstRow: Math.min(...both.map(([first]) => first)),
    lastRow: Math.max(...both.map(([, last]) => last)),
    ...columns,
  };
}

type Columns = Pick<CellRange, 'firstColumn' | 'lastColumn'>;

function columnsOf({ range, columns }: BookTable, named: readonly string[]): Columns | undefined {
  if (named.length === 0) return { firstColumn: range.firstColumn, lastColumn: range.lastColumn };
  const places = named.map((name) => columns.findIndex((column) => alike(column) === alike(name)));
  if (places.some((place) => place < 0)) return undefined;
  return {
    firstColumn: range.firstColumn + Math.min(...places),
    lastColumn: range.firstColumn + Math.max(...places),
  };
}

/** A heading may run over several lines; the name of its column then has a blank or an escape there. */
function alike(column: string): string {
  return column
    .replace(/_x000[ad]_/gi, ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();
}

function rowsOf(table: BookTable, part: TablePart, row: number): readonly [number, number] | 'elsewhere' | undefined {
  const { firstRow, lastRow } = table.range;
  const data = [firstRow + (table.headings ? 1 : 0), lastRow - (table.totals ? 1 : 0)] as const;
  switch (part) {
    case '#All':
      return [firstRow, lastRow];
    case '#Data':
      return data[0] <= data[1] ? data : undefined;
    case '#Headers':
      return table.headings ? [firstRow, firstRow] : undefined;
    case '#Totals':
      return table.totals ? [lastRow, lastRow] : undefined;
    case '#This Row':
      return row >= data[0] && row <= data[1] ? [row, row] : 'elsewhere';
  }
}
