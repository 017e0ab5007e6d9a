import { addressOf } from '../address/addressOf.js';
import { prefixOf } from '../xml/elementAt.js';
import type { CellWrite } from './cellWrite.js';
import { formulaPiece } from './formulaPiece.js';
import { plannedValue } from './plannedValue.js';
import type { RowAt, SheetMap } from './sheetMap.js';
import { tagWith } from './tagWith.js';
import type { SheetContext } from './workbookContext.js';

/** Where a new cell goes; the row is undefined if it is new too. */
interface Place {
  readonly row: RowAt | undefined;
  readonly map: SheetMap;
  readonly context: SheetContext;
}

/** A new cell with the style of its row or column; '' where there is nothing to write. */
export function newCell(write: CellWrite, { row, map, context }: Place): string {
  const prefix = prefixOf(map.data);
  const ofPlace = styleOfPlace(row, write.column, map);
  const formula = formulaPiece(write, { xml: '', prefix, cell: undefined, context });
  const planned = plannedValue(write, { prefix, style: ofPlace, formula: formula.xml }, context);
  const { content, style = ofPlace ?? null } = planned;
  if (formula.xml === '' && content.xml === '') return '';
  const tag = tagWith(`<${prefix}c r="${addressOf(write.row, write.column)}">`, {
    s: style,
    t: content.type,
    cm: formula.mark ?? null,
  });
  return `${tag}${formula.xml}${content.xml}</${prefix}c>`;
}

/** The style that a cell takes from its row or else its column, as when a person types into an empty cell. */
function styleOfPlace(row: RowAt | undefined, column: number, { columns }: SheetMap): string | undefined {
  const { s: style, customFormat: own } = row?.attributes ?? {};
  if (style !== undefined && (own === '1' || own === 'true')) return style;
  const ofColumn = columns.find(({ first, last }) => column >= first && column <= last)?.style;
  return ofColumn === '0' ? undefined : ofColumn;
}
