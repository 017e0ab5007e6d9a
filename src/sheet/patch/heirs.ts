import { addressRange } from '../address/addressOf.js';
import { movableFormula } from '../formula/movableFormula.js';
import { xmlText } from '../xml/xmlText.js';
import type { CellAt, SheetMap } from './sheetMap.js';
import { tagWith } from './tagWith.js';

/**
 * Cells that take over a shared formula, with their new `<f>`. Only the first cell of a shared formula holds its text; when
 * that cell gets another formula or none, the next cell that keeps the formula must hold the text.
 */
export function heirs(
  xml: string,
  { shared, masters }: SheetMap,
  keepsFormula: (cell: CellAt) => boolean,
): Map<CellAt, string> {
  const found = new Map<CellAt, string>();
  for (const [number, master] of masters) {
    if (!master.formula || keepsFormula(master)) continue;
    const left = (shared.get(number) ?? []).filter((cell) => cell !== master && keepsFormula(cell));
    const heir = left[0];
    if (!heir?.formula) continue;
    const { row, column, formula } = heir;
    const text = movableFormula(master.formula.text)(row - master.row, column - master.column);
    const tag = xml.slice(formula.from, formula.tagTo).replace(/\s*\/?>$/, '>');
    found.set(heir, `${tagWith(tag, { ref: boundsOf(left) })}${xmlText(text)}</${formula.name}>`);
  }
  return found;
}

function boundsOf(cells: readonly CellAt[]): string {
  let [top, left, bottom, right] = [Infinity, Infinity, 0, 0];
  for (const { row, column } of cells) {
    [top, bottom] = [Math.min(top, row), Math.max(bottom, row)];
    [left, right] = [Math.min(left, column), Math.max(right, column)];
  }
  return addressRange({ firstRow: top, firstColumn: left, lastRow: bottom, lastColumn: right });
}
