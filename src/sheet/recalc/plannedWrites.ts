import type { CellPlace } from '../address/cellRange.js';
import type { Book, BookCell } from '../book/book.js';
import { isDateFormat } from '../book/isDateFormat.js';
import type { CellValue } from '../cell/cellValue.js';
import { dayIn1904 } from '../cell/days1904.js';
import type { TypedFormula } from '../cell/formulaText.js';
import { sameCell } from '../cell/sameCell.js';
import { storableValue } from '../cell/storableValue.js';
import type { CellWrite } from '../patch/cellWrite.js';
import type { CellAnswer } from './cellAnswers.js';

/** A cell whose stored value is no longer what its formula gives. */
export interface CellChange extends CellPlace {
  /** '' for a cell filled, or filled no longer, by the array formula of another. */
  readonly formula: TypedFormula;
  readonly was: CellValue;
  readonly is: CellValue;
  /** Why it is an error. */
  readonly reason?: string;
  /** A moment, counted from 1900; a bare number in a file that counts from 1904 is not said to be one. */
  readonly isTime?: boolean;
  /** The cell whose array formula fills this one. */
  readonly anchor?: { readonly row: number; readonly column: number };
}

interface PlannedWrites {
  readonly writes: readonly CellWrite[];
  readonly changes: readonly CellChange[];
}

/** What to write into a file so that its cells hold fresh answers: only those that differ from the stored ones. */
export function plannedWrites(book: Book, answers: readonly CellAnswer[]): PlannedWrites {
  const rows = new Map(book.sheets.map((sheet) => [sheet.name, sheet.rows]));
  const writes: CellWrite[] = [];
  const changes: CellChange[] = [];
  for (const answer of answers) {
    const cell = rows.get(answer.sheet)?.[answer.row]?.[answer.column];
    if (answer.isKept === true) continue;
    const value = countedAsStored(answer, cell, book.date1904);
    const isSame = isStoredAs(cell, value, answer);
    if (!isSame || fillsOthers(answer, cell)) writes.push(cellWrite(answer, cell, storableValue(value), book.date1904));
    if (!isSame) changes.push(cellChange(answer, cell?.value ?? null, value));
  }
  return { writes, changes };
}

/** A moment in a cell without a date format is counted as the file counts; with one, reading and writing take care of it. */
function countedAsStored({ value, isTime }: CellAnswer, cell: BookCell | undefined, date1904: boolean): CellValue {
  const isBare = cell !== undefined && !isDateFormat(cell.format);
  return date1904 && isTime === true && isBare && typeof value === 'number' ? dayIn1904(value) : value;
}

function isStoredAs(cell: BookCell | undefined, value: CellValue, { anchor }: CellAnswer): boolean {
  const stored = cell?.value ?? null;
  const fresh = storableValue(value);
  if (sameCell(stored, fresh)) return true;
  // An empty text and a blank look the same, but a cell that did not exist has to be made.
  const isThere = cell !== undefined || anchor === undefined;
  return isThere && (stored ?? '') === '' && (fresh ?? '') === '';
}

function fillsOthers({ fills }: CellAnswer, cell: BookCell | undefined): boolean {
  if (fills === undefined) return false;
  const stored = cell?.fills;
  return stored === undefined || stored.lastRow !== fills.lastRow || stored.lastColumn !== fills.lastColumn;
}

function cellWrite(answer: CellAnswer, cell: BookCell | undefined, value: CellValue, date1904: boolean): CellWrite {
  const { sheet, row, column, fills, isTime } = answer;
  return {
    sheet,
    row,
    column,
    value,
    ...(fills !== undefined && { fills }),
    ...(fills !== undefined && cell?.dynamic === true && { dynamic: true }),
    // Whether the place of a new cell has a date format is not known here, and that decides from when it counts.
    ...(date1904 && isTime === true && cell === undefined && { isDate: true }),
  };
}

function cellChange(answer: CellAnswer, was: CellValue, is: CellValue): CellChange {
  const { sheet, row, column, formula, reason, isTime, anchor } = answer;
  return {
    sheet,
    row,
    column,
    formula,
    was,
    is,
    ...(reason !== undefined && { reason }),
    ...(isTime === true && is === answer.value && { isTime }),
    ...(anchor !== undefined && { anchor }),
  };
}
