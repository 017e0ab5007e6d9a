import type { CellPlace, CellRange } from '../address/cellRange.js';
import type { StoredFormula } from '../cell/formulaText.js';
import type { CellValue } from '../cell/cellValue.js';
import { storableValue } from '../cell/storableValue.js';
import { FileProblem } from '../zip/fileProblem.js';

/** What one cell is to hold. */
export interface CellWrite extends CellPlace {
  /** Days of a cell with a date format count from 1900, whatever the file counts from. */
  readonly value: CellValue;
  /** `undefined` keeps the present one, `null` removes it. */
  readonly formula?: StoredFormula | null;
  /** The cells that the array formula of this cell fills. */
  readonly fills?: CellRange;
  /** Whether the formula given is an array that may grow and shrink. */
  readonly dynamic?: boolean;
  /** Asks for a date format where the cell has none. */
  readonly isDate?: boolean;
}

/** The writes of one sheet by row and column, both in ascending order; the last one of a cell counts. */
export type CellWrites = ReadonlyMap<number, ReadonlyMap<number, CellWrite>>;

/** The writes by their sheets, with values that a file can hold. */
export function writesBySheet(writes: readonly CellWrite[]): Map<string, CellWrites> {
  const sheets = new Map(writes.map(({ sheet }) => [sheet, new Map<number, Map<number, CellWrite>>()]));
  const ordered = [...writes].sort((one, other) => one.row - other.row || one.column - other.column);
  for (const write of ordered) {
    const { sheet, row, column, value } = write;
    const ofRow = sheets.get(sheet)?.get(row) ?? new Map<number, CellWrite>();
    sheets.get(sheet)?.set(row, ofRow.set(column, { ...write, value: storableValue(value) }));
  }
  return sheets;
}

/** Throws if the file has no sheet of this name. */
export function refuseMissingSheet(asked: Iterable<string>, sheets: ReadonlyMap<string, unknown>): void {
  for (const name of asked) {
    if (sheets.has(name)) continue;
    const names = [...sheets.keys()].map((one) => `"${one}"`).join(', ');
    throw new FileProblem(`There is no sheet "${name}" in the file; name one of its sheets: ${names}.`);
  }
}
