import { isoFromSerial } from '../../engine/index.js';
import { type Book, type CellValue, csvText, isDateFormat, patchOds, patchXlsx } from '../../sheet/index.js';
import { qtNames } from '../calls/outsideFunctions.js';
import { changedCells } from './changedCells.js';
import type { GridCell, GridSheet } from './gridSheets.js';
import { newWorkbook } from './newWorkbook.js';
import { placesInCopy } from './placesInCopy.js';
import { sheetId } from './gridKeys.js';
import type { ShownFile } from './shownFile.js';

interface SavedCopy {
  readonly bytes: Uint8Array;
  readonly name: string;
  readonly type: string;
  /** What its owner should know about it. */
  readonly remark: string;
}

const movedRemark = {
  xlsx: ' Rows or columns were inserted or deleted: charts and conditional formats did not move with them.',
  ods: ' Rows or columns were inserted or deleted: charts, named ranges and conditional formats did not move with them.',
};
const xlsxType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
const odsType = 'application/vnd.oasis.opendocument.spreadsheet';

/** The grid as a file: the one it came from with the changes made in it, or a new one. */
export function savedCopy(shown: ShownFile, sheets: readonly GridSheet[]): SavedCopy {
  const { bytes, book } = shown.opened;
  if (book.kind === 'csv') return csvCopy(shown.name, sheets);
  if (!hasSameSheets(book, sheets))
    return newCopy(
      shown.name,
      sheets,
      'Sheets were added, renamed or removed, so this is a new file: it has no charts, colours or macros of the original.',
    );
  const writes = sheets.flatMap((now, index) => {
    const sheet = book.sheets[index];
    return sheet === undefined ? [] : changedCells({ sheet, now, formulas: shown.formulas });
  });
  const patched =
    book.kind === 'ods' ? patchOds(bytes, writes, qtNames) : placesInCopy(patchXlsx(bytes, writes), book, shown.places);
  const count = writes.length === 0 ? 'No' : String(writes.length);
  const origin = shown.isDemo === true ? 'the demo as it was made' : 'the file that was opened';
  const cells = writes.length < 2 ? `${count} cell differs` : `${count} cells differ`;
  return {
    bytes: patched,
    name: copyName(shown.name),
    type: book.kind === 'ods' ? odsType : xlsxType,
    remark: `${cells} from ${origin}; everything else is unchanged.${shown.isMoved ? movedRemark[book.kind] : ''}`,
  };
}

function newCopy(name: string, sheets: readonly GridSheet[], remark: string): SavedCopy {
  return { bytes: newWorkbook(sheets), name: copyName(name, '.xlsx'), type: xlsxType, remark };
}

function csvCopy(name: string, sheets: readonly GridSheet[]): SavedCopy {
  const [sheet] = sheets;
  const hasFormulas = sheets.some(({ rows }) => rows.some((row) => row?.some((cell) => cell?.formula !== undefined)));
  if (sheet === undefined || sheets.length > 1 || hasFormulas)
    return newCopy(name, sheets, 'It is a workbook, because formulas were added, which plain text cannot hold.');
  const width = sheet.widths.length;
  const rows = Array.from({ length: sheet.rows.length }, (_, row) =>
    Array.from({ length: width }, (__, column) => csvValue(sheet.rows[row]?.[column])),
  );
  const text = /\.tsv$/i.test(name) ? csvText(rows, '\t') : csvText(rows);
  return {
    bytes: new TextEncoder().encode(text),
    name: copyName(name),
    type: 'text/csv;charset=utf-8',
    remark:
      'Days are written year first, numbers with a decimal point, fields separated by commas or, in .tsv, by tabs.',
  };
}

/** Days as text that no program reads as another day. */
function csvValue(cell: GridCell | undefined): CellValue {
  if (cell === undefined) return null;
  if (typeof cell.value !== 'number' || !isDateFormat(cell.format)) return cell.value;
  const text = isoFromSerial(cell.value);
  return text.endsWith(' 00:00') ? text.slice(0, 10) : text;
}

function hasSameSheets(book: Book, sheets: readonly GridSheet[]): boolean {
  return (
    book.sheets.length === sheets.length &&
    book.sheets.every(({ name }, index) => sheets[index]?.id === sheetId(index) && sheets[index]?.name === name)
  );
}

/** `past.xlsx` as `past copy.xlsx`. */
function copyName(name: string, extension?: string): string {
  const dot = name.lastIndexOf('.');
  const stem = dot > 0 ? name.slice(0, dot) : name;
  const own = dot > 0 ? name.slice(dot) : '.xlsx';
  return `${stem} copy${extension ?? own}`;
}
