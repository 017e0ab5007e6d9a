import { addressOf } from '../address/addressOf.js';
import type { CellWrite } from './cellWrite.js';
import { formulaPiece } from './formulaPiece.js';
import { plannedValue } from './plannedValue.js';
import type { SheetContext } from './sheetContext.js';
import { tagWith } from './tagWith.js';

/** A cell where there was none, with the style of its row or column; '' where there is nothing to put. */
export function newCell(
  write: CellWrite,
  at: { prefix: string; style: string | undefined },
  context: SheetContext,
): string {
  const { prefix } = at;
  const formula = formulaPiece(write, { xml: '', prefix, cell: undefined, context });
  const { content, style = at.style ?? null } = plannedValue(write, { ...at, formula: formula.xml }, context);
  if (formula.xml === '' && content.xml === '') return '';
  const tag = tagWith(`<${prefix}c r="${addressOf(write.row, write.column)}">`, {
    s: style,
    t: content.type,
    cm: formula.mark ?? null,
  });
  return `${tag}${formula.xml}${content.xml}</${prefix}c>`;
}
