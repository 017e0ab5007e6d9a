import { sheetLimits } from '../address/sheetLimits.js';
import { isCellError, errorCell } from '../cell/cellValue.js';
import type { FormulaNode } from '../formula/formulaNode.js';
import { cellNumber } from './cellReading.js';
import { firstCell } from './content.js';
import { Area, type Value, type Scope } from './value.js';

/** OFFSET: a range moved, and resized if asked; a negative size reaches up or to the left. */
export function offsetForm([of, ...rest]: readonly (FormulaNode | undefined)[], scope: Scope): Value {
  const base = of === undefined ? null : scope.evaluate(of, scope);
  if (isCellError(base)) return base;
  if (!(base instanceof Area)) return errorCell('#VALUE!');
  const [down, right, height, width] = [0, 1, 2, 3].map((i) => {
    const isLeftOut = rest[i] === undefined;
    return isLeftOut ? [0, 0, base.rowCount, base.columnCount][i] : cellNumber(firstCell(rest[i], scope));
  });
  const wrong = [down, right, height, width].find(isCellError);
  if (wrong !== undefined) return wrong;
  const rows = span(base.range.firstRow + Math.trunc(Number(down)), Math.trunc(Number(height)));
  const columns = span(base.range.firstColumn + Math.trunc(Number(right)), Math.trunc(Number(width)));
  const isOutside =
    rows === undefined ||
    columns === undefined ||
    rows[0] < 0 ||
    columns[0] < 0 ||
    rows[1] >= sheetLimits.rows ||
    columns[1] >= sheetLimits.columns;
  if (isOutside) return errorCell('#REF!');
  const range = { firstRow: rows[0], lastRow: rows[1], firstColumn: columns[0], lastColumn: columns[1] };
  return new Area(base.sheet, range, base.isWhole);
}

function span(first: number, size: number): readonly [number, number] | undefined {
  if (size === 0) return undefined;
  return size > 0 ? [first, first + size - 1] : [first + size + 1, first];
}
