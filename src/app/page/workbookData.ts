import {
  BooleanNumber,
  CellValueType,
  HorizontalAlign,
  LocaleType,
  type ICellData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
} from '@univerjs/core';
import { cellRange } from '../../sheet/index.js';
import type { NumberFormat, PlanCell, SheetPlan } from '../templates/demo/sheetPlan.js';
import { lookStyle, plainStyle } from './lookStyle.js';

type Grid = Record<number, Record<number, ICellData>>;

const spareColumns = 14;
const rowHeight = 24;

/** The demo's plans as the sheet component takes a workbook. */
export function workbookData(plans: readonly SheetPlan[]): Partial<IWorkbookData> {
  return {
    id: 'demo',
    name: 'Demo',
    locale: LocaleType.EN_US,
    sheetOrder: plans.map((plan) => plan.name),
    sheets: Object.fromEntries(plans.map((plan) => [plan.name, worksheet(plan)])),
  };
}

function worksheet(plan: SheetPlan): Partial<IWorksheetData> {
  return {
    id: plan.name,
    name: plan.name,
    rowCount: plan.rows,
    columnCount: plan.widths.length + spareColumns,
    defaultRowHeight: rowHeight,
    defaultStyle: plainStyle,
    showGridlines: BooleanNumber.FALSE,
    freeze: { xSplit: 0, ySplit: plan.frozenRows, startRow: plan.frozenRows, startColumn: -1 },
    columnData: Object.fromEntries(plan.widths.map((w, column) => [column, { w }])),
    mergeData: plan.merged.map((address) => {
      const { firstRow, firstColumn, lastRow, lastColumn } = cellRange(address);
      return { startRow: firstRow, startColumn: firstColumn, endRow: lastRow, endColumn: lastColumn };
    }),
    cellData: cells(plan),
  };
}

function cells(plan: SheetPlan): Grid {
  const grid: Grid = {};
  for (const { range, look } of plan.looks)
    forEachCell(range, (row, column) => addStyle(grid, row, column, lookStyle[look]));
  for (const { range, format } of plan.formats)
    forEachCell(range, (row, column) => addFormat(grid, row, column, format));
  for (const { at, cells: rows } of plan.blocks) {
    const { firstRow, firstColumn } = cellRange(at);
    rows.forEach((row, r) =>
      row.forEach((cell, c) => Object.assign(cellAt(grid, firstRow + r, firstColumn + c), content(cell))),
    );
  }
  return grid;
}

function content(cell: PlanCell): ICellData {
  if (cell === null) return {};
  if (typeof cell === 'number') return { v: cell, t: CellValueType.NUMBER };
  if (cell.startsWith('=')) return { f: cell };
  const looksLikeANumber = cell.trim() !== '' && !Number.isNaN(Number(cell));
  return { v: cell, t: looksLikeANumber ? CellValueType.FORCE_STRING : CellValueType.STRING };
}

function addStyle(grid: Grid, row: number, column: number, style: IStyleData): void {
  const cell = cellAt(grid, row, column);
  cell.s = { ...(cell.s as IStyleData | undefined), ...style };
}

/** Times stand left, under their heading, where the look does not say otherwise. */
function addFormat(grid: Grid, row: number, column: number, format: NumberFormat): void {
  const cell = cellAt(grid, row, column);
  const side = format.startsWith('yyyy') ? { ht: HorizontalAlign.LEFT } : {};
  cell.s = { ...side, ...(cell.s as IStyleData | undefined), n: { pattern: format } };
}

function cellAt(grid: Grid, row: number, column: number): ICellData {
  return ((grid[row] ??= {})[column] ??= {});
}

function forEachCell(address: string, visit: (row: number, column: number) => void): void {
  const { firstRow, firstColumn, lastRow, lastColumn } = cellRange(address);
  for (let row = firstRow; row <= lastRow; row++) {
    for (let column = firstColumn; column <= lastColumn; column++) visit(row, column);
  }
}
