import { isCellError, errorCell, type CellValue } from '../cell/cellValue.js';
import type { FormulaNode } from '../formula/formulaNode.js';
import { cellNumber } from './cellReading.js';
import { content, operand } from './content.js';
import { mapped } from './mapped.js';
import { Area, isGrid, type Grid, type Value, type Scope } from './value.js';

/** INDEX: a cell, a row or a column of a table; of a range, a range. 0 means all. */
export function indexForm([of, row, column]: readonly (FormulaNode | undefined)[], scope: Scope): Value {
  const source = of === undefined ? null : scope.evaluate(of, scope);
  if (isCellError(source)) return source;
  const table = source instanceof Area || isGrid(source) ? source : [[source instanceof Object ? null : source]];
  const [height, width] =
    table instanceof Area ? [table.rowCount, table.columnCount] : [table.length, table[0]?.length ?? 0];
  const isRow = height === 1 && column === undefined && width > 1;
  const [down, right] = isRow ? [0, operand(row, scope)] : [operand(row, scope), operand(column, scope)];
  if (!isGrid(down) && !isGrid(right)) return picked(table, down, right);
  return mapped([down, right], (r = null, c = null) => {
    const one = content(picked(table, r, c), scope);
    return isGrid(one) ? (one[0]?.[0] ?? null) : one;
  });
}

function picked(table: Area | Grid, row: CellValue, column: CellValue): Value {
  const [down, right] = [cellNumber(row), cellNumber(column)];
  if (isCellError(down)) return down;
  if (isCellError(right)) return right;
  const [r, c] = [Math.trunc(down), Math.trunc(right)];
  if (r < 0 || c < 0) return errorCell('#VALUE!');
  if (table instanceof Area) {
    if (r > table.rowCount || c > table.columnCount) return errorCell('#REF!');
    const { firstRow, lastRow, firstColumn, lastColumn } = table.range;
    const range = {
      firstRow: r === 0 ? firstRow : firstRow + r - 1,
      lastRow: r === 0 ? lastRow : firstRow + r - 1,
      firstColumn: c === 0 ? firstColumn : firstColumn + c - 1,
      lastColumn: c === 0 ? lastColumn : firstColumn + c - 1,
    };
    return new Area(table.sheet, range, table.isWhole && r === 0);
  }
  if (r > table.length || c > (table[0]?.length ?? 0)) return errorCell('#REF!');
  const rows = r === 0 ? table : table.slice(r - 1, r);
  return c === 0 ? rows : rows.map((cells) => cells.slice(c - 1, c));
}
