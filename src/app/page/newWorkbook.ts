import { utils, write, type CellObject, type WorkSheet } from '@e965/xlsx';
import { addressOf, type CellWrite, isCellError, patchXlsx, storableValue } from '../../sheet/index.js';
import type { GridCell, GridSheet } from './gridSheets.js';
import { storedForm } from './storedForm.js';

/** Codes of errors in a file. */
const errorCodes: Readonly<Record<string, number>> = {
  '#NULL!': 0x00,
  '#DIV/0!': 0x07,
  '#VALUE!': 0x0f,
  '#REF!': 0x17,
  '#NAME?': 0x1d,
  '#NUM!': 0x24,
  '#N/A': 0x2a,
};

/** The grid as a new .xlsx: values, formulas with their values, number formats, widths and merged cells. */
export function newWorkbook(sheets: readonly GridSheet[]): Uint8Array {
  const book = utils.book_new();
  for (const sheet of sheets) utils.book_append_sheet(book, worksheet(sheet), sheet.name);
  book.Workbook = { Sheets: sheets.map(({ hidden }) => ({ Hidden: hidden ? 1 : 0 })) };
  const bytes = new Uint8Array(write(book, { bookType: 'xlsx', type: 'array', compression: true }) as ArrayBuffer);
  return patchXlsx(bytes, sheets.flatMap(formulaWrites));
}

function worksheet(sheet: GridSheet): WorkSheet {
  const cells: WorkSheet = {};
  eachCell(sheet, (cell, row, column) => {
    cells[addressOf(row, column)] = cellObject(cell);
  });
  const lastRow = Math.max(0, sheet.rows.length - 1);
  const lastColumn = Math.max(0, sheet.widths.length - 1);
  cells['!ref'] = `A1:${addressOf(lastRow, lastColumn)}`;
  cells['!cols'] = sheet.widths.map((wpx) => ({ wpx }));
  cells['!merges'] = sheet.merged.map(({ firstRow, firstColumn, lastRow: endRow, lastColumn: endColumn }) => ({
    s: { r: firstRow, c: firstColumn },
    e: { r: endRow, c: endColumn },
  }));
  return cells;
}

function cellObject({ value, format }: GridCell): CellObject {
  const z = format === undefined ? {} : { z: format };
  if (value === null) return { t: 'z', ...z };
  if (typeof value === 'number') return { t: 'n', v: value, ...z };
  if (typeof value === 'boolean') return { t: 'b', v: value, ...z };
  if (isCellError(value)) return { t: 'e', v: errorCodes[value.basicValue] ?? 0x0f, ...z };
  return { t: 's', v: value, ...z };
}

/** Formulas are written afterwards: the writer knows no array that may grow. */
function formulaWrites(sheet: GridSheet): CellWrite[] {
  const writes: CellWrite[] = [];
  eachCell(sheet, ({ formula, value, spills }, row, column) => {
    if (formula === undefined) return;
    writes.push({ sheet: sheet.name, row, column, value: storableValue(value), ...storedForm(formula, spills) });
  });
  return writes;
}

function eachCell(sheet: GridSheet, visit: (cell: GridCell, row: number, column: number) => void): void {
  sheet.rows.forEach((row, r) => row?.forEach((cell, c) => (cell === undefined ? undefined : visit(cell, r, c))));
}
