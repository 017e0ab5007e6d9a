import type { ElementAt, SheetMap } from './sheetMap.js';

/** The style that a cell put into an empty place takes over from its row or else its column, as when a person types there. */
export function styleOfPlace(row: ElementAt | undefined, column: number, { columns }: SheetMap): string | undefined {
  const { s: style, customFormat: own } = row?.attributes ?? {};
  if (style !== undefined && (own === '1' || own === 'true')) return style;
  const ofColumn = columns.find(({ first, last }) => column >= first && column <= last)?.style;
  return ofColumn === '0' ? undefined : ofColumn;
}
