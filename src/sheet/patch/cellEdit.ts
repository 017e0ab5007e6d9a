import { isCellError, type CellValue } from '../cell/cellValue.js';
import { storedValue } from '../xlsx/storedValue.js';
import { type ElementAt, prefixOf } from '../xml/elementAt.js';
import type { CellContent } from './cellContent.js';
import type { CellWrite } from './cellWrite.js';
import { formulaPiece } from './formulaPiece.js';
import { plannedValue } from './plannedValue.js';
import type { SheetContext } from './workbookContext.js';
import type { CellAt } from './sheetMap.js';
import { spliced, type Splice } from './splice.js';
import { tagWith } from './tagWith.js';

interface CellEdit {
  /** The whole cell; unchanged parts are as written before. */
  readonly xml: string;
  readonly otherFormula: boolean;
  /** Whether only an empty cell without a style is left. */
  readonly isBare: boolean;
}

/** A cell of the sheet after a write: the value, and the formula if one is given, are new, all else stays as written. */
export function cellEdit(xml: string, cell: CellAt, write: CellWrite, context: SheetContext): CellEdit {
  const prefix = prefixOf(cell);
  const formula = formulaPiece(write, { xml, prefix, cell, context });
  const planned = plannedValue(write, { cell, prefix, style: cell.attributes['s'], formula: formula.xml }, context);
  const tag = xml.slice(cell.from, cell.tagTo);
  const style = planned.style === undefined ? {} : { s: planned.style };
  if (!formula.isOther && holdsValue(cell, planned.value, context.sharedTexts)) {
    const text = whole(tagWith(tag, style), innerWithFormula(xml, cell, formula.xml), cell.name);
    return { xml: text, otherFormula: false, isBare: false };
  }
  const mark = formula.mark === undefined ? {} : { cm: formula.mark };
  const start = tagWith(tag, { t: planned.content.type, vm: null, ...mark, ...style });
  const text = whole(start, inner(xml, cell, formula.xml, planned.content), cell.name);
  return { xml: text, otherFormula: formula.isOther, isBare: /^<\S*\s+r\s*=\s*("[^"]*"|'[^']*')\s*\/>$/.test(text) };
}

/** The cell with only its `<f>` replaced. */
export function cellWithFormula(xml: string, cell: CellAt, formula: string): string {
  return whole(xml.slice(cell.from, cell.tagTo), innerWithFormula(xml, cell, formula), cell.name);
}

function innerWithFormula(xml: string, cell: CellAt, formula: string): string {
  const old = xml.slice(cell.tagTo, cell.contentTo);
  return cell.formula ? spliced(old, [inCell(cell, cell.formula, formula)]) : old;
}

/** The formula and then the value, each in its old place if it had one. */
function inner(xml: string, cell: CellAt, formula: string, content: CellContent): string {
  const { formula: oldFormula, value, inline } = cell;
  const splices: Splice[] = [oldFormula ? inCell(cell, oldFormula, formula) : { from: 0, to: 0, text: formula }];
  const place = value ?? inline;
  const after = oldFormula ? oldFormula.to - cell.tagTo : 0;
  splices.push(place ? inCell(cell, place, content.xml) : { from: after, to: after, text: content.xml });
  if (value && inline) splices.push(inCell(cell, inline, ''));
  return spliced(xml.slice(cell.tagTo, cell.contentTo), splices);
}

function inCell(cell: CellAt, { from, to }: ElementAt, text: string): Splice {
  return { from: from - cell.tagTo, to: to - cell.tagTo, text };
}

function whole(start: string, content: string, name: string): string {
  if (content === '') return start.replace(/\s*\/?>$/, '/>');
  return `${start.replace(/\s*\/>$/, '>')}${content}</${name}>`;
}

/** Whether the cell already holds the value. */
function holdsValue(
  { attributes, value, inline }: CellAt,
  wanted: CellValue,
  sharedTexts: SheetContext['sharedTexts'],
): boolean {
  const { t: type, vm } = attributes;
  const stored = storedValue({ type, text: value?.text, inline: inline?.text }, type === 's' ? sharedTexts() : []);
  if (!isCellError(stored) || !isCellError(wanted)) return stored === wanted;
  // A rich error is shown under a different name from the stored one.
  return vm === undefined && stored.basicValue === wanted.basicValue;
}
