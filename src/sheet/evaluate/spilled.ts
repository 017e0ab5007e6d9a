import { isCellError } from '../cell/cellValue.js';
import { Area, errorCell, type Scope, type Value } from './value.js';

/** The cells that the array formula of a cell fills: `G1#`. */
export function spilled(of: Value, { world }: Scope): Value {
  if (isCellError(of)) return of;
  if (!(of instanceof Area) || !of.isOneCell) return errorCell('#REF!');
  const { sheet, range } = of;
  const fills = world.spill({ sheet, row: range.firstRow, column: range.firstColumn });
  return fills === undefined ? errorCell('#REF!') : new Area(sheet, fills);
}
