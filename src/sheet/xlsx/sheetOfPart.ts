import type { BookSheet } from '../book/book.js';
import { SheetGrid } from '../book/sheetGrid.js';
import { walkXml } from '../xml/walkXml.js';
import type { SharedParts } from './sharedParts.js';
import { SheetReader } from './sheetReader.js';
import type { SheetPart } from './workbookPart.js';

/** One sheet of an xlsx file. */
export function sheetOfPart(bytes: Uint8Array, sheet: SheetPart, shared: SharedParts): BookSheet {
  const reader = new SheetReader(new SheetGrid(sheet.name, shared.count), shared);
  walkXml(bytes, sheet.part, reader);
  const widths = reader.widths.slice(0, reader.grid.lastColumn + 1);
  const { rows } = reader.grid;
  const layout = reader.layout === undefined ? {} : { layout: reader.layout.layout() };
  return { name: sheet.name, hidden: sheet.hidden, rows, merged: reader.merged, widths, ...layout };
}
