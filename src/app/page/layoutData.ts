import { BooleanNumber, type IColumnData, type IRowData, type IWorksheetData } from '@univerjs/core';
import { type BookCell, type BookSheet, isCellError } from '../../sheet/index.js';
import type { BookStyles } from './bookStyles.js';

type LayoutData = Pick<
  IWorksheetData,
  'defaultRowHeight' | 'defaultStyle' | 'rowData' | 'columnData' | 'showGridlines'
> &
  Partial<Pick<IWorksheetData, 'tabColor'>>;

const usualHeight = 24;
const pixelsOfAPoint = 96 / 72;
/** Of a line of text to its letters. */
const lineSpacing = 1.3;

/** Rows, columns and the rest of a sheet besides its cells, as its file has them. */
export function layoutData(
  sheet: BookSheet,
  styles: BookStyles,
  size: { readonly rows: number; readonly columns: number; readonly filled: number },
): LayoutData {
  const { layout } = sheet;
  return {
    defaultRowHeight: layout === undefined ? usualHeight : (layout.defaultHeight ?? usualHeight),
    defaultStyle: styles.plain,
    showGridlines: layout?.gridlines === false ? BooleanNumber.FALSE : BooleanNumber.TRUE,
    rowData: rowData(sheet, styles, size.rows),
    columnData: columnData(sheet, styles, size),
    ...(layout?.tab === undefined ? {} : { tabColor: layout.tab }),
  };
}

function columnData(
  sheet: BookSheet,
  styles: BookStyles,
  { columns, filled }: { columns: number; filled: number },
): Record<number, Partial<IColumnData>> {
  const data: Record<number, Partial<IColumnData>> = {};
  columnWidths(sheet, filled).forEach((w, column) => (data[column] = { w }));
  for (let column = 0; column < columns; column++) {
    const s = styles.nameOf(sheet.layout?.columnStyles.get(column) ?? {});
    const hd = sheet.layout?.hiddenColumns.has(column) === true ? { hd: BooleanNumber.TRUE } : {};
    if (s !== undefined || 'hd' in hd) data[column] = { ...data[column], ...(s === undefined ? {} : { s }), ...hd };
  }
  return data;
}

function rowData(sheet: BookSheet, styles: BookStyles, rows: number): Record<number, Partial<IRowData>> {
  const data: Record<number, Partial<IRowData>> = {};
  const { layout, rows: cells } = sheet;
  if (layout === undefined) return data;
  const usual = layout.defaultHeight ?? usualHeight;
  for (let row = 0; row < rows; row++) {
    const isFixed = layout.fixedRows.has(row);
    const h = heightOf(layout.heights[row], isFixed ? undefined : heightOfLetters(cells[row], usual));
    const s = styles.nameOf(layout.rowStyles.get(row) ?? {});
    const isHidden = layout.hiddenRows.has(row);
    if (h === undefined && s === undefined && !isHidden) continue;
    data[row] = {
      ...(h === undefined ? {} : { h }),
      // Others grow with a text that is typed.
      ...(isFixed ? { ia: BooleanNumber.FALSE } : {}),
      ...(s === undefined ? {} : { s }),
      ...(isHidden ? { hd: BooleanNumber.TRUE } : {}),
    };
  }
  return data;
}

function heightOf(stated: number | undefined, needed: number | undefined): number | undefined {
  if (stated === undefined || needed === undefined) return stated ?? needed;
  return Math.max(stated, needed);
}

/** A row whose height nobody set has room for its largest letters; undefined: the usual height is enough. */
function heightOfLetters(cells: BookSheet['rows'][number], usual: number): number | undefined {
  let largest = 0;
  cells?.forEach((cell) => {
    if (cell?.look?.size !== undefined && cell.value !== null && cell.look.size > largest) largest = cell.look.size;
  });
  const needed = Math.ceil(largest * pixelsOfAPoint * lineSpacing);
  return needed > usual ? needed : undefined;
}

const [narrowest, widest] = [64, 320];
const pixelsOfALetter = 7;
const padding = 18;
/** Rows looked at: a log repeats itself. */
const rowsSeen = 300;

/** The width of each column in pixels: as the file says, else wide enough for what stands in it. */
function columnWidths(sheet: BookSheet, columns: number): number[] {
  return Array.from({ length: columns }, (_, column) => sheet.widths[column] ?? fittingWidth(sheet, column));
}

function fittingWidth(sheet: BookSheet, column: number): number {
  const letters = sheet.rows.slice(0, rowsSeen).map((row) => lettersIn(row?.[column]));
  const longest = letters.reduce((most, count) => Math.max(most, count), 0);
  return Math.min(widest, Math.max(narrowest, longest * pixelsOfALetter + padding));
}

function lettersIn(cell: BookCell | undefined): number {
  if (cell === undefined || cell.value === null) return 0;
  if (isCellError(cell.value)) return cell.value.basicValue.length;
  if (typeof cell.value === 'number')
    return Math.max(cell.format?.length ?? 0, Math.min(String(cell.value).length, 10));
  return String(cell.value).length;
}
