import {
  BooleanNumber,
  CellValueType,
  IUniverInstanceService,
  UniverInstanceType,
  type ICellData,
  type IDocumentData,
  type Nullable,
  type Workbook,
  type Worksheet,
} from '@univerjs/core';
import { ERROR_TYPE_SET, FormulaDataModel, type ErrorType } from '@univerjs/preset-sheets-core';
import type { BookCell, CellRange, CellValue, EnteredFormula } from '../../sheet/index.js';
import { keptFormula } from './keptFormula.js';
import type { OpenedSheet } from './openSheet.js';

/** One cell as it stands in the grid now. */
export interface GridCell {
  readonly value: CellValue;
  readonly formula?: EnteredFormula;
  /** The number format. */
  readonly format?: string;
  /** Filled by the table of another cell: not content of its own. */
  readonly isSpilled?: boolean;
  /** The cells that the formula's table covers, its own among them. */
  readonly spills?: CellRange;
  /** What the file holds in a cell whose formula the grid cannot compute: here its stored value is shown. */
  readonly stored?: Pick<BookCell, 'formula' | 'fills'>;
}

/** One sheet as it stands in the grid now. */
export interface GridSheet {
  readonly id: string;
  readonly name: string;
  readonly hidden: boolean;
  readonly rows: readonly (readonly (GridCell | undefined)[] | undefined)[];
  /** Of the columns that hold something, in pixels. */
  readonly widths: readonly number[];
  readonly merged: readonly CellRange[];
}

/** Everything the grid holds now: what people typed, what formulas give, and the tables that they spill. */
export function gridSheets({ univer }: OpenedSheet): GridSheet[] {
  const injector = univer.__getInjector();
  const workbook = injector.get(IUniverInstanceService).getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
  if (!workbook) return [];
  const formulas = injector.get(FormulaDataModel);
  return workbook.getSheets().map((worksheet) => {
    const rows = rowsOf(workbook, worksheet, formulas);
    const columns = rows.reduce((most, row) => Math.max(most, row?.length ?? 0), 0);
    return {
      id: worksheet.getSheetId(),
      name: worksheet.getName(),
      hidden: worksheet.isSheetHidden() === BooleanNumber.TRUE,
      rows,
      widths: Array.from({ length: columns }, (_, column) => worksheet.getColumnWidth(column)),
      merged: worksheet.getMergeData().map(cellsOf),
    };
  });
}

function rowsOf(workbook: Workbook, worksheet: Worksheet, formulas: FormulaDataModel): (GridCell | undefined)[][] {
  const [unit, sheet] = [workbook.getUnitId(), worksheet.getSheetId()];
  const styles = workbook.getStyles();
  const rows: (GridCell | undefined)[][] = [];
  const put = (row: number, column: number, cell: GridCell): void => {
    (rows[row] ??= [])[column] = cell;
  };
  const formatOf = (cell: ICellData): string | undefined => styles.get(cell.s)?.n?.pattern;
  const spills = formulas.getArrayFormulaRange()[unit]?.[sheet];

  worksheet.getCellMatrix().forValue((row, column, cell) => {
    if (!cell) return;
    const isFormula = Boolean(cell.f) || Boolean(cell.si);
    const formula = isFormula ? formulas.getFormulaStringByCell(row, column, sheet, unit) : undefined;
    const value = cellValue(cell);
    if (value === null && !formula) return;
    const format = formatOf(cell);
    const range = formula ? spills?.[row]?.[column] : undefined;
    const stored = formula ? undefined : keptFormula(cell, { row, column, value });
    put(row, column, {
      value,
      ...(formula ? { formula } : {}),
      ...(format === undefined ? {} : { format }),
      ...(range ? { spills: cellsOf(range) } : {}),
      ...(stored === undefined ? {} : { stored }),
    });
  });
  eachSpilled(formulas.getArrayFormulaCellData()[unit]?.[sheet], (row, column, cell) => {
    if (rows[row]?.[column] !== undefined) return;
    const own = worksheet.getCellMatrix().getValue(row, column);
    // A format of the cell itself goes before that of the answer, as it does on the screen.
    const format = (own ? formatOf(own) : undefined) ?? formatOf(cell);
    put(row, column, { value: cellValue(cell), isSpilled: true, ...(format === undefined ? {} : { format }) });
  });
  return rows;
}

function cellsOf(range: { startRow: number; startColumn: number; endRow: number; endColumn: number }): CellRange {
  return {
    firstRow: range.startRow,
    firstColumn: range.startColumn,
    lastRow: range.endRow,
    lastColumn: range.endColumn,
  };
}

function eachSpilled(
  cells: Nullable<Record<number, Nullable<Record<number, Nullable<ICellData>>>>>,
  visit: (row: number, column: number, cell: ICellData) => void,
): void {
  for (const [row, columns] of Object.entries(cells ?? {})) {
    for (const [column, cell] of Object.entries(columns ?? {})) if (cell) visit(Number(row), Number(column), cell);
  }
}

function cellValue(cell: ICellData): CellValue {
  const value = cell.v ?? textOf(cell.p);
  if (value === null || value === undefined || value === '') return null;
  if (cell.t === CellValueType.BOOLEAN) return value === 1 || value === true || value === 'TRUE';
  if (cell.t === CellValueType.FORCE_STRING) return String(value);
  if (typeof value === 'string') {
    if (cell.t === CellValueType.NUMBER && !Number.isNaN(Number(value))) return Number(value);
    return ERROR_TYPE_SET.has(value as ErrorType) ? { type: 'Error', basicValue: value } : value;
  }
  return value;
}

/** A text with letters of several kinds is held as a small document. */
function textOf(document: Nullable<IDocumentData>): string | undefined {
  return document?.body?.dataStream.replace(/\r\n$/, '').replace(/\r/g, '\n');
}
