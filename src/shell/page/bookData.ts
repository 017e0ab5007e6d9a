import {
  BooleanNumber,
  HorizontalAlign,
  LocaleType,
  type ICellData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
} from '@univerjs/core';
import type { Book, BookSheet } from '../workbook/book.js';
import { isDateFormat } from '../workbook/isDateFormat.js';
import type { CellRange } from '../address/cellRange.js';
import { cellKey } from './cellKey.js';
import { columnWidths } from './columnWidths.js';
import { filledCells } from './filledCells.js';
import { lastRow } from './lastRow.js';
import { headingStyle, numberHeadingStyle, plainStyle } from './lookStyle.js';
import { sheetId } from './sheetId.js';
import type { CellFormula } from './shownFile.js';
import { valueData } from './valueData.js';

type Cells = Record<number, Record<number, ICellData>>;
type Styles = Record<string, IStyleData>;

export interface BookShown {
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
const rowHeight = 24;
/** Rows below a heading that are looked at. */
const rowsSeen = 60;
/** A heading further down than this does not stay in view: it would take the room of the rows. */
const lastFrozenRow = 8;

/** An opened file as the sheet component takes a workbook: stored values first, formulas to be computed anew. */
export function bookData(shown: BookShown): Partial<IWorkbookData> {
  const styles: Styles = { heading: headingStyle, numberHeading: numberHeadingStyle };
  const sheets = shown.book.sheets.map((sheet, index) => worksheet(shown, sheet, index, styles));
  return {
    id: shown.unit,
    name: shown.name,
    locale: LocaleType.EN_US,
    styles,
    sheetOrder: sheets.map(({ id }) => id),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id, sheet])),
  };
}

function worksheet(
  shown: BookShown,
  sheet: BookSheet,
  index: number,
  styles: Styles,
): Partial<IWorksheetData> & { id: string } {
  const headings = shown.headingsOf(sheet.name);
  const width = sheet.rows.reduce((widest, row) => Math.max(widest, row?.length ?? 0), 0);
  return {
    id: sheetId(index),
    name: sheet.name,
    hidden: sheet.hidden ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    rowCount: lastRow(sheet) + 1 + spareRows,
    columnCount: Math.max(width + spareColumns, fewestColumns),
    defaultRowHeight: rowHeight,
    defaultStyle: plainStyle,
    freeze: frozenAt(headings),
    columnData: Object.fromEntries(columnWidths(sheet, width).map((w, column) => [column, { w }])),
    mergeData: sheet.merged.map(({ firstRow, firstColumn, lastRow, lastColumn }) => ({
      startRow: firstRow,
      startColumn: firstColumn,
      endRow: lastRow,
      endColumn: lastColumn,
    })),
    cellData: cells(shown, sheet, index, styles),
  };
}

/** The rows down to the heading of a sheet's only log stay in view. */
function frozenAt(headings: readonly CellRange[]): IWorksheetData['freeze'] {
  const row = headings.length === 1 ? (headings[0]?.lastRow ?? -1) : -1;
  const frozen = row >= 0 && row <= lastFrozenRow ? row + 1 : 0;
  return { xSplit: 0, ySplit: frozen, startRow: frozen === 0 ? -1 : frozen, startColumn: -1 };
}

function cells({ formulas, headingsOf }: BookShown, sheet: BookSheet, index: number, styles: Styles): Cells {
  const grid: Cells = {};
  const headings = headingsOf(sheet.name);
  const isFilled = filledCells(sheet);
  const end = lastRow(sheet) + spareRows;
  sheet.rows.forEach((row, r) => {
    if (row === undefined || r > end) return;
    const isHeading = (column: number): boolean => headings.some((range) => isIn(range, r, column));
    const line: Record<number, ICellData> = {};
    row.forEach((cell, column) => {
      if (cell === undefined || isFilled(r, column)) return;
      const style = isHeading(column) ? headingOver(sheet, r, column) : formatStyle(cell.format, styles);
      const formula = formulas.get(cellKey(sheetId(index), r, column))?.plain ?? undefined;
      line[column] = {
        ...valueData(cell.value),
        ...(formula === undefined ? {} : { f: formula }),
        ...(style === undefined ? {} : { s: style }),
      };
    });
    grid[r] = line;
  });
  return grid;
}

function formatStyle(format: string | undefined, styles: Styles): string | undefined {
  if (format === undefined || format === '' || format === 'General') return undefined;
  const id = `format ${format}`;
  // Times stand left, under their heading.
  styles[id] ??= { n: { pattern: format }, ...(isDateFormat(format) ? { ht: HorizontalAlign.LEFT } : {}) };
  return id;
}

/** A heading stands as what is below it does. */
function headingOver({ rows }: BookSheet, row: number, column: number): string {
  const first = rows
    .slice(row + 1, row + 1 + rowsSeen)
    .map((cells) => cells?.[column])
    .find((cell) => cell !== undefined && cell.value !== null);
  return typeof first?.value === 'number' && !isDateFormat(first.format) ? 'numberHeading' : 'heading';
}

function isIn(range: CellRange, row: number, column: number): boolean {
  return range.firstRow <= row && row <= range.lastRow && range.firstColumn <= column && column <= range.lastColumn;
}
