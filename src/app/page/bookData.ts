import { BooleanNumber, type ICellData, type IWorkbookData, type IWorksheetData, LocaleType } from '@univerjs/core';
import type { Book, BookSheet, CellRange } from '../../sheet/index.js';
import { BookStyles, headingName } from './bookStyles.js';
import { cellKey, sheetId } from './gridKeys.js';
import { filledCells, lastRow } from './filledCells.js';
import { layoutData } from './layoutData.js';
import type { CellFormula } from './shownFile.js';
import { valueData } from './valueData.js';

type Cells = Record<number, Record<number, ICellData>>;

interface BookShown {
  /** The id of the workbook in the sheet component. */
  readonly unit: string;
  readonly name: string;
  readonly book: Book;
  /** By cellKey. */
  readonly formulas: ReadonlyMap<string, CellFormula>;
  /** The heading rows of the logs of a sheet, to be set off from their readings. */
  readonly headingsOf: (sheet: string) => readonly CellRange[];
}

const spareRows = 200;
const spareColumns = 8;
const fewestColumns = 16;
/** A heading further down than this does not stay in view: it would take the room of the rows. */
const lastFrozenRow = 8;

/** An opened file as the sheet component takes a workbook: stored values first; the formulas are computed afterwards. */
export function bookData(shown: BookShown): Partial<IWorkbookData> {
  const styles = new BookStyles(shown.book);
  const sheets = shown.book.sheets.map((sheet, index) => worksheet(shown, sheet, index, styles));
  return {
    id: shown.unit,
    name: shown.name,
    locale: LocaleType.EN_US,
    styles: styles.named,
    sheetOrder: sheets.map(({ id }) => id),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id, sheet])),
  };
}

function worksheet(
  shown: BookShown,
  sheet: BookSheet,
  index: number,
  styles: BookStyles,
): Partial<IWorksheetData> & { id: string } {
  const filled = sheet.rows.reduce((widest, row) => Math.max(widest, row?.length ?? 0), 0);
  const rows = lastRow(sheet) + 1 + spareRows;
  const columns = Math.max(filled + spareColumns, fewestColumns);
  return {
    id: sheetId(index),
    name: sheet.name,
    hidden: sheet.hidden ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    rowCount: rows,
    columnCount: columns,
    ...layoutData(sheet, styles, { rows, columns, filled }),
    freeze: frozenIn(sheet, shown.headingsOf(sheet.name)),
    mergeData: sheet.merged.map(({ firstRow, firstColumn, lastRow, lastColumn }) => ({
      startRow: firstRow,
      startColumn: firstColumn,
      endRow: lastRow,
      endColumn: lastColumn,
    })),
    cellData: cells(shown, sheet, index, styles),
  };
}

/** What stays in view: as the file has it, else the rows down to the heading of a sheet's only log. */
function frozenIn({ layout }: BookSheet, headings: readonly CellRange[]): IWorksheetData['freeze'] {
  const row = headings.length === 1 ? (headings[0]?.lastRow ?? -1) : -1;
  const seen = { rows: row >= 0 && row <= lastFrozenRow ? row + 1 : 0, columns: 0 };
  const { rows, columns } = layout?.frozen ?? seen;
  return { xSplit: columns, ySplit: rows, startRow: rows === 0 ? -1 : rows, startColumn: columns === 0 ? -1 : columns };
}

function cells({ formulas, headingsOf }: BookShown, sheet: BookSheet, index: number, styles: BookStyles): Cells {
  const grid: Cells = {};
  const headings = headingsOf(sheet.name);
  const isFilled = filledCells(sheet);
  const end = lastRow(sheet) + spareRows;
  sheet.rows.forEach((row, r) => {
    if (row === undefined || r > end) return;
    const line: Record<number, ICellData> = {};
    row.forEach((cell, column) => {
      if (cell === undefined) return;
      const style = headingName(sheet, headings, { row: r, column }) ?? styles.nameOf(cell);
      const s = style === undefined ? {} : { s: style };
      // What another cell's table fills has no content of its own, and shows it in its own look and format.
      if (isFilled(r, column)) {
        if (style !== undefined) line[column] = s;
        return;
      }
      const formula = formulas.get(cellKey(sheetId(index), r, column))?.plain ?? undefined;
      line[column] = { ...valueData(cell.value), ...(formula === undefined ? {} : { f: formula }), ...s };
    });
    grid[r] = line;
  });
  return grid;
}
