/** A rectangle of cells, counted from 0, both ends included. */
export interface CellRange {
  readonly firstRow: number;
  readonly firstColumn: number;
  readonly lastRow: number;
  readonly lastColumn: number;
}

/** `"B2:D9"` or `"B2"` as numbers. */
export function cellRange(address: string): CellRange {
  const [first = '', last = first] = address.split(':');
  const [firstRow, firstColumn] = cell(first);
  const [lastRow, lastColumn] = cell(last);
  return { firstRow, firstColumn, lastRow, lastColumn };
}

function cell(address: string): readonly [row: number, column: number] {
  const parts = /^([A-Z]+)([1-9]\d*)$/.exec(address);
  if (parts?.[1] === undefined || parts[2] === undefined) throw new Error(`not a cell: ${address}`);
  const column = [...parts[1]].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0);
  return [Number(parts[2]) - 1, column - 1];
}
