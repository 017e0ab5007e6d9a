import type { IRange, Univer } from '@univerjs/core';
import { ERROR_TYPE_SET, type ErrorType, FormulaDataModel, SetSelectionsOperation } from '@univerjs/preset-sheets-core';
import { addressOf } from '../../sheet/index.js';
import type { FunctionEntry } from '../calls/functionCatalogue.js';
import { cellKey } from './gridKeys.js';
import type { OpenedSheet } from './openSheet.js';
import { Refusals } from '../calls/refusals.js';
import type { CellFormula } from './shownFile.js';
import { type SelectedCell, type Status, statusOf } from './statusOf.js';

interface SelectionWatch {
  readonly sheet: OpenedSheet;
  readonly refusals: Refusals;
  readonly entries: readonly FunctionEntry[];
  /** By cellKey. */
  readonly known: (cell: string) => CellFormula | undefined;
}

/**
 * Keeps the line below the grid in step with the selection and with every recalculation.
 *
 * @returns shows it again
 */
export function watchSelection({ sheet, refusals, entries, known }: SelectionWatch): () => void {
  const show = (): void => {
    const cell = selectedCell(sheet, refusals, known);
    if (cell !== undefined) showStatus(cell, statusOf(cell, entries));
  };
  // Not the SelectionChanged event: it stays silent when the first move is made through the name box.
  sheet.api.addEvent(sheet.api.Event.CommandExecuted, ({ id }) => {
    if (id === SetSelectionsOperation.id) show();
  });
  sheet.api.addEvent(sheet.api.Event.ActiveSheetChanged, show);
  sheet.api.getFormula().calculationResultApplied(show);
  show();
  return show;
}

function selectedCell(
  { univer, api }: OpenedSheet,
  refusals: Refusals,
  known: SelectionWatch['known'],
): SelectedCell | undefined {
  const workbook = api.getActiveWorkbook();
  const worksheet = workbook?.getActiveSheet();
  const range = worksheet?.getSelection()?.getActiveRange();
  if (workbook === null || workbook === undefined || worksheet === undefined || !range) return undefined;
  const [row, column] = [range.getRow(), range.getColumn()];
  const anchor = tableAnchor(univer, workbook.getId(), worksheet.getSheetId(), row, column);
  const [formulaRow, formulaColumn] = anchor ?? [row, column];
  const value = range.getRawValue();
  const formula = worksheet.getRange(formulaRow, formulaColumn).getFormula();
  const error = typeof value === 'string' && ERROR_TYPE_SET.has(value as ErrorType) ? value : undefined;
  return {
    address: addressOf(row, column),
    value: range.getDisplayValue(),
    formula,
    error,
    reason: refusals.reason(Refusals.cell(worksheet.getSheetId(), formulaRow, formulaColumn)),
    written: writtenOf(formula, known(cellKey(worksheet.getSheetId(), formulaRow, formulaColumn))),
    tableFrom: anchor === undefined || (anchor[0] === row && anchor[1] === column) ? undefined : addressOf(...anchor),
  };
}

/** What people wrote, where the grid has another text for it or, as it cannot compute it, none. */
function writtenOf(formula: string, known: CellFormula | undefined): string | undefined {
  return known === undefined || known.typed === formula || (known.plain ?? '') !== formula ? undefined : known.typed;
}

/** The cell whose spilled table covers this one. */
function tableAnchor(
  univer: Univer,
  unit: string,
  sheet: string,
  row: number,
  column: number,
): readonly [number, number] | undefined {
  const ranges = univer.__getInjector().get(FormulaDataModel).getArrayFormulaRange()[unit]?.[sheet] ?? {};
  for (const [anchorRow, columns] of Object.entries(ranges)) {
    for (const [anchorColumn, range] of Object.entries<IRange>(columns ?? {})) {
      const inside =
        range.startRow <= row && row <= range.endRow && range.startColumn <= column && column <= range.endColumn;
      if (inside) return [Number(anchorRow), Number(anchorColumn)];
    }
  }
  return undefined;
}

interface ShownCell {
  readonly address: string;
  /** What the cell shows, as text. */
  readonly value: string;
}

/** Writes the line below the grid. A text that has not changed is left alone, so that it is not read out twice. */
export function showStatus({ address, value }: ShownCell, { kind, text }: Status): void {
  const bar = document.getElementById('status');
  if (bar !== null) bar.dataset['kind'] = kind;
  write('status-cell', address);
  write('status-value', value);
  write('status-text', text);
}

function write(id: string, text: string): void {
  const element = document.getElementById(id);
  if (element !== null && element.textContent !== text) element.textContent = text;
}
