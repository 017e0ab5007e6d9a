import { addressOf } from '../address/addressOf.js';
import { rangeIn, type CellRange } from '../address/cellRange.js';
import { xmlText } from '../xml/xmlText.js';
import type { CellWrite } from './cellWrite.js';
import { movableFormula } from '../formula/movableFormula.js';
import type { SheetContext } from './workbookContext.js';
import type { CellAt, TextAt } from './sheetMap.js';
import { tagWith } from './tagWith.js';

interface FormulaPiece {
  /** `<f>` as it will be written; '' for none. */
  readonly xml: string;
  /** Whether the formula differs from before; filling a range of another size does not count. */
  readonly isOther: boolean;
  /** The new attribute `cm`; null removes it, undefined leaves it. */
  readonly mark?: string | null;
}

interface Place {
  readonly xml: string;
  readonly prefix: string;
  /** Undefined where there is no cell yet. */
  readonly cell: CellAt | undefined;
  readonly context: SheetContext;
}

/** The stored formula of a cell after a write. */
export function formulaPiece(write: CellWrite, place: Place): FormulaPiece {
  const { cell, context } = place;
  if (cell && sameFormula(write, cell, context.masters))
    return { xml: keptFormula(write, cell, place), isOther: false };
  if (typeof write.formula !== 'string') return { xml: '', isOther: cell !== undefined, mark: null };
  const text = write.formula.replace(/^=/, '');
  const tag = `${place.prefix}f`;
  const isArray = write.dynamic === true || write.fills !== undefined;
  const kind = isArray ? ` t="array" ref="${rangeText(filledBy(write))}"` : '';
  const blanks = /^\s|\s$/.test(text) ? ' xml:space="preserve"' : '';
  const mark = write.dynamic === true ? context.dynamicMark() : null;
  return { xml: `<${tag}${kind}${blanks}>${xmlText(text)}</${tag}>`, isOther: true, mark };
}

function keptFormula({ fills }: CellWrite, cell: CellAt, { xml, context }: Place): string {
  if (!cell.formula) return '';
  const inherited = context.heirs.get(cell);
  if (inherited !== undefined) return inherited;
  const { attributes, from, tagTo, to } = cell.formula;
  const filled = rangeIn(attributes['ref']);
  const resized = fills && attributes['t'] === 'array' && (!filled || rangeText(filled) !== rangeText(fills));
  if (!resized) return xml.slice(from, to);
  return tagWith(xml.slice(from, tagTo), { ref: rangeText(fills) }) + xml.slice(tagTo, to);
}

function filledBy({ fills, row, column }: CellWrite): CellRange {
  return fills ?? { firstRow: row, firstColumn: column, lastRow: row, lastColumn: column };
}

function rangeText({ firstRow, firstColumn, lastRow, lastColumn }: CellRange): string {
  const [first, last] = [addressOf(firstRow, firstColumn), addressOf(lastRow, lastColumn)];
  return first === last ? first : `${first}:${last}`;
}

/**
 * Whether the cell has the same formula after the write as before.
 * @param masters The first cell of each shared formula, by its number.
 */
export function sameFormula(write: CellWrite, cell: CellAt, masters: ReadonlyMap<string, CellAt>): boolean {
  const before = cell.formula;
  if (write.formula === undefined) return true;
  if (write.formula === null || !before) return write.formula === null && !before;
  if (formulaOf(cell, before, masters) !== write.formula.replace(/^=/, '')) return false;
  // A write that does not say whether the formula is an array leaves that unchanged.
  if (write.dynamic === undefined && write.fills === undefined) return true;
  const isDynamic = write.dynamic === true;
  const isArray = isDynamic || write.fills !== undefined;
  return isArray === (before.attributes['t'] === 'array') && isDynamic === (cell.attributes['cm'] !== undefined);
}

/** A cell that shares the formula of another has no text of its own. */
function formulaOf(cell: CellAt, formula: TextAt, masters: ReadonlyMap<string, CellAt>): string {
  const master = masters.get(formula.attributes['si'] ?? '');
  if (formula.attributes['t'] !== 'shared' || formula.text !== '' || !master?.formula) return formula.text;
  return movableFormula(master.formula.text)(cell.row - master.row, cell.column - master.column);
}
