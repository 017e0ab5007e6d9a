import type { Book, BookSheet } from '../book/book.js';
import { SheetGrid } from '../book/sheetGrid.js';
import { walkXml } from '../xml/walkXml.js';
import type { PackageParts } from '../zip/packageParts.js';
import { cellStyles } from './cellStyles.js';
import { dynamicCells } from './dynamicCells.js';
import { sharedStrings } from './sharedStrings.js';
import { type SharedParts, SheetReader } from './sheetReader.js';
import { tablesOfSheet } from './tablesOfSheet.js';
import { themeColours } from './themeColours.js';
import { type SheetPart, type WorkbookPart, workbookPart } from './workbookPart.js';

/** A workbook of an .xlsx or .xlsm file. */
export function readXlsx(parts: PackageParts, withLooks = false): Book {
  const workbook = workbookPart(parts);
  const shared = sharedBy(parts, workbook, withLooks);
  const [plain] = shared.looks ?? [];
  return {
    kind: 'xlsx',
    sheets: workbook.sheets.map((sheet) => sheetOfPart(parts.bytes(sheet.part) ?? new Uint8Array(), sheet, shared)),
    names: workbook.names,
    tables: workbook.sheets.flatMap((sheet) => tablesOfSheet(parts, sheet)),
    date1904: workbook.date1904,
    remarks: workbook.date1904
      ? ['The file counts its days from 1904; cells with a date format were read as the days they show.']
      : [],
    ...(plain === undefined ? {} : { plain }),
  };
}

function sharedBy(parts: PackageParts, workbook: WorkbookPart, withLooks: boolean): SharedParts {
  const theme = withLooks ? (ofType(parts, workbook, 'theme', themeColours) ?? []) : [];
  const styles = ofType(parts, workbook, 'styles', (bytes, part) => cellStyles(bytes, part, { theme, withLooks }));
  const { formats, looks, colours } = styles ?? { formats: [], looks: [], colours: { theme, indexed: [] } };
  return {
    strings: ofType(parts, workbook, 'sharedStrings', sharedStrings) ?? [],
    formats,
    dynamic: ofType(parts, workbook, 'sheetMetadata', dynamicCells) ?? new Set(),
    date1904: workbook.date1904,
    count: { filled: 0, blank: 0 },
    ...(withLooks ? { looks, colours } : {}),
  };
}

/** What the first part of this type holds; undefined where there is none. */
function ofType<T>(
  parts: PackageParts,
  workbook: WorkbookPart,
  type: string,
  read: (bytes: Uint8Array, part: string) => T,
): T | undefined {
  const part = workbook.relations.find((relation) => relation.type === type)?.part;
  const bytes = part === undefined ? undefined : parts.bytes(part);
  return part === undefined || bytes === undefined ? undefined : read(bytes, part);
}

function sheetOfPart(bytes: Uint8Array, sheet: SheetPart, shared: SharedParts): BookSheet {
  const reader = new SheetReader(new SheetGrid(sheet.name, shared.count), shared);
  walkXml(bytes, sheet.part, reader);
  const widths = reader.widths.slice(0, reader.grid.lastColumn + 1);
  const { rows } = reader.grid;
  const layout = reader.layout === undefined ? {} : { layout: reader.layout.layout() };
  return { name: sheet.name, hidden: sheet.hidden, rows, merged: reader.merged, widths, ...layout };
}
