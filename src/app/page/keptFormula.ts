import type { ICellData } from '@univerjs/core';
import type { BookCell, CellValue } from '../../sheet/index.js';

interface Kept {
  readonly formula: string;
  readonly value: CellValue;
  /** How many rows and columns the formula fills. */
  readonly size?: readonly [rows: number, columns: number];
}

/** Makes a cell of the grid remember its formula in the file; the cell carries it along when rows are inserted or deleted. */
export function keepingFormula({ formula = '', value, fills }: BookCell): Pick<ICellData, 'custom'> {
  const size = fills && ([fills.lastRow - fills.firstRow + 1, fills.lastColumn - fills.firstColumn + 1] as const);
  const kept: Kept = { formula, value, ...(size === undefined ? {} : { size }) };
  return { custom: { kept } };
}

interface CellNow {
  readonly row: number;
  readonly column: number;
  readonly value: CellValue;
}

/** The formula that a cell remembers; undefined where there is none, or another value was typed over it. */
export function keptFormula(
  { custom }: ICellData,
  { row, column, value }: CellNow,
): Pick<BookCell, 'formula' | 'fills'> | undefined {
  const kept = custom?.['kept'] as Kept | undefined;
  if (kept?.value !== value) return undefined;
  const { formula, size } = kept;
  if (size === undefined) return { formula };
  const [rows, columns] = size;
  const fills = { firstRow: row, firstColumn: column, lastRow: row + rows - 1, lastColumn: column + columns - 1 };
  return { formula, fills };
}
