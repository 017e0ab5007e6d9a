import {
  type BookCell,
  type BookSheet,
  type CellValue,
  type CellWrite,
  isCellError,
  isDateFormat,
  storableValue,
} from '../../sheet/index.js';
import { cellKey } from './gridKeys.js';
import type { GridCell, GridSheet } from './gridSheets.js';
import type { CellFormula } from './shownFile.js';
import { storedForm } from './storedForm.js';

interface SheetNow {
  readonly sheet: BookSheet;
  readonly now: GridSheet;
  /** By cellKey. */
  readonly formulas: ReadonlyMap<string, CellFormula>;
}

interface Compared {
  readonly was: BookCell | undefined;
  readonly is: GridCell | undefined;
  readonly known: CellFormula | undefined;
}

type Change = Omit<CellWrite, 'sheet' | 'row' | 'column'>;

/** The cells of a sheet that are to be written into a copy of its file: what was changed, and what formulas give now. */
export function changedCells({ sheet, now, formulas }: SheetNow): CellWrite[] {
  const writes: CellWrite[] = [];
  for (let row = 0; row < Math.max(sheet.rows.length, now.rows.length); row++) {
    const [before, after] = [sheet.rows[row] ?? [], now.rows[row] ?? []];
    for (let column = 0; column < Math.max(before.length, after.length); column++) {
      const known = formulas.get(cellKey(now.id, row, column));
      const change = changeOf({ was: before[column], is: after[column], known });
      if (change !== undefined) writes.push({ sheet: sheet.name, row, column, ...change });
    }
  }
  return writes;
}

function changeOf({ was, is, known }: Compared): Change | undefined {
  const value = storableValue(is?.value ?? null);
  const date = typeof value === 'number' && isDateFormat(is?.format) ? { isDate: true } : {};
  const isSame = sameValue(value, was?.value ?? null);
  if (is?.formula !== undefined) {
    if (known?.plain !== is.formula) return { value, ...storedForm(is.formula, is.spills), ...date };
    if (!known.isStored) return { value, ...storedForm(known.typed, is.spills), ...date };
    const grown = was?.dynamic === true && is.spills !== undefined && !sameRange(is.spills, was.fills);
    return isSame && !grown ? undefined : { value, ...(grown ? { fills: is.spills } : {}) };
  }
  const isCleared = known?.isStored === true && known.plain !== null;
  if (isSame && !isCleared) return undefined;
  return { value, ...(was?.formula === undefined ? {} : { formula: null }), ...date };
}

function sameRange(a: GridCell['spills'], b: GridCell['spills']): boolean {
  return (
    a?.firstRow === b?.firstRow &&
    a?.firstColumn === b?.firstColumn &&
    a?.lastRow === b?.lastRow &&
    a?.lastColumn === b?.lastColumn
  );
}

/** Two programs add the same numbers up in another order: what differs less than this is the same. */
const tolerance = 1e-11;

/** Whether a cell that holds one shows the same as a cell that holds the other. */
function sameValue(a: CellValue, b: CellValue): boolean {
  if (typeof a === 'number' && typeof b === 'number')
    return Math.abs(a - b) <= tolerance * Math.max(Math.abs(a), Math.abs(b));
  if (isCellError(a) && isCellError(b)) return a.basicValue === b.basicValue;
  return a === b || (isEmpty(a) && isEmpty(b));
}

function isEmpty(value: CellValue): boolean {
  return value === null || value === '';
}
