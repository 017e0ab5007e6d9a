import { isCellError, errorCell } from '../cell/cellValue.js';
import { Area, type Scope, type Value } from './value.js';

/** The smallest range that holds both: `A1:INDEX(A:A,5)`. */
export function joinedAreas(left: Value, right: Value): Value {
  if (!(left instanceof Area && right instanceof Area) || left.sheet !== right.sheet) return errorCell('#REF!');
  const [a, b] = [left.range, right.range];
  return new Area(
    left.sheet,
    {
      firstRow: Math.min(a.firstRow, b.firstRow),
      lastRow: Math.max(a.lastRow, b.lastRow),
      firstColumn: Math.min(a.firstColumn, b.firstColumn),
      lastColumn: Math.max(a.lastColumn, b.lastColumn),
    },
    left.isWhole || right.isWhole,
  );
}

/** The cells that two ranges share: `A1:B9 B2:C3`. */
export function sharedArea(left: Value, right: Value): Value {
  if (!(left instanceof Area && right instanceof Area)) return errorCell('#NULL!');
  const [a, b] = [left.range, right.range];
  const range = {
    firstRow: Math.max(a.firstRow, b.firstRow),
    lastRow: Math.min(a.lastRow, b.lastRow),
    firstColumn: Math.max(a.firstColumn, b.firstColumn),
    lastColumn: Math.min(a.lastColumn, b.lastColumn),
  };
  const isEmpty = range.firstRow > range.lastRow || range.firstColumn > range.lastColumn;
  return left.sheet !== right.sheet || isEmpty
    ? errorCell('#NULL!')
    : new Area(left.sheet, range, left.isWhole && right.isWhole);
}

/** The cells that the array formula of a cell fills: `G1#`. */
export function spilled(of: Value, { world }: Scope): Value {
  if (isCellError(of)) return of;
  if (!(of instanceof Area) || !of.isOneCell) return errorCell('#REF!');
  const { sheet, range } = of;
  const fills = world.spill({ sheet, row: range.firstRow, column: range.firstColumn });
  return fills === undefined ? errorCell('#REF!') : new Area(sheet, fills);
}
