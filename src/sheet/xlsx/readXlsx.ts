import type { Book } from '../book/book.js';
import type { PackageParts } from '../zip/packageParts.js';
import { cellFormats } from './cellFormats.js';
import { cellLooks } from './cellLooks.js';
import { dynamicCells } from './dynamicCells.js';
import { sharedStrings } from './sharedStrings.js';
import { sheetOfPart } from './sheetOfPart.js';
import type { SharedParts } from './sharedParts.js';
import { tablesOfSheet } from './tablesOfSheet.js';
import { themeColours } from './themeColours.js';
import { type WorkbookPart, workbookPart } from './workbookPart.js';

/** A workbook of an .xlsx or .xlsm file. */
export function readXlsx(parts: PackageParts, withLooks = false): Book {
  const workbook = workbookPart(parts);
  const shared = { ...sharedBy(parts, workbook), ...(withLooks ? looksOf(parts, workbook) : {}) };
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

function sharedBy(parts: PackageParts, workbook: WorkbookPart): SharedParts {
  return {
    strings: ofType(parts, workbook, 'sharedStrings', sharedStrings) ?? [],
    formats: ofType(parts, workbook, 'styles', cellFormats) ?? [],
    dynamic: ofType(parts, workbook, 'sheetMetadata', dynamicCells) ?? new Set(),
    date1904: workbook.date1904,
    count: { filled: 0, blank: 0 },
  };
}

function looksOf(parts: PackageParts, workbook: WorkbookPart): Required<Pick<SharedParts, 'looks' | 'colours'>> {
  const theme = ofType(parts, workbook, 'theme', themeColours) ?? [];
  const styles = ofType(parts, workbook, 'styles', (bytes, part) => cellLooks(bytes, part, theme));
  return styles ?? { looks: [], colours: { theme, indexed: [] } };
}

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
