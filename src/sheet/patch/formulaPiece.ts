import { addressOf } from '../address/addressOf.js';
import { rangeIn, type CellRange } from '../address/cellRange.js';
import { xmlText } from '../xml/xmlText.js';
import type { CellWrite } from './cellWrite.js';
import { sameFormula } from './sameFormula.js';
import type { SheetContext } from './workbookContext.js';
import type { CellAt } from './sheetMap.js';
import { tagWith } from './tagWith.js';

interface FormulaPiece {
  /** `<f>` as it is to stand; '' for none. */
  readonly xml: string;
  /** Whether the formula is another one than before; a new size of what it fills is no new formula. */
  readonly isOther: boolean;
  /** What becomes of the attribute `cm`; undefined: nothing. */
  readonly mark?: string | null;
}

interface Place {
  readonly xml: string;
  readonly prefix: string;
  /** Undefined where there is no cell yet. */
  readonly cell: CellAt | undefined;
  readonly context: SheetContext;
}

/** The formula of a cell after the write, as stored. */
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
