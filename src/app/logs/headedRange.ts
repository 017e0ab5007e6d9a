import type { BookCell, BookSheet, CellRange } from '../../sheet/index.js';
import type { HeadedBlock } from './headedBlocks.js';
import { headingKey, timeIn } from '../../engine/index.js';
import { headingKinds } from './headingKinds.js';
import { isAnswer, isBlankCell, saysNumber, valueAt } from './cellsAt.js';

interface HeadedRange {
  readonly sheet: BookSheet;
  readonly block: HeadedBlock;
  readonly filled: readonly CellRange[];
  /** What else stands on the sheet: cards, tables, answers. */
  readonly blocks: readonly CellRange[];
}

/** The cells of a log from its headings to its last row, above whatever stands below it. */
export function headedRange({ sheet, block, filled, blocks }: HeadedRange): CellRange {
  const { headingRow, firstColumn, lastColumn } = block;
  const below = blocks.filter(
    (other) => other.firstRow > headingRow && other.firstColumn <= lastColumn && firstColumn <= other.lastColumn,
  );
  const end = Math.min(sheet.rows.length, ...below.map(({ firstRow }) => firstRow));
  return { firstRow: headingRow, firstColumn, lastRow: lastLogRow({ sheet, block, filled, end }), lastColumn };
}

interface RowsBelow {
  readonly sheet: BookSheet;
  readonly block: HeadedBlock;
  readonly filled: readonly CellRange[];
  /** The first row below that another block has; the sheet's end if there is none. */
  readonly end: number;
}

/**
 * The last row of a log. Blank rows within it are fine; another heading row ends it, and what follows a blank row without
 * any time or reading is not part of it.
 */
function lastLogRow({ sheet, block, filled, end }: RowsBelow): number {
  let last = block.headingRow;
  let isAfterBlank = false;
  for (let row = block.headingRow + 1; row < end; row++) {
    if (isBlankRow(sheet, row, block)) {
      isAfterBlank = true;
      continue;
    }
    if (isOtherHeading(sheet, row, block, filled)) break;
    if (isAnswerRow(sheet, row, block)) {
      if (!goesOn(sheet, row, block, end)) break;
      isAfterBlank = true;
      continue;
    }
    if (isAfterBlank && isWordsAlone(sheet, row, block) && !goesOn(sheet, row, block, end)) break;
    if (!isAfterBlank || isEntry(sheet, row, block)) {
      last = row;
      isAfterBlank = false;
    }
  }
  return last;
}

function isBlankRow(sheet: BookSheet, row: number, { firstColumn, lastColumn }: HeadedBlock): boolean {
  for (let column = firstColumn; column <= lastColumn; column++) if (!isBlankCell(sheet, row, column)) return false;
  return true;
}

/** A log's own headings once more do not end it. */
function isOtherHeading(sheet: BookSheet, row: number, block: HeadedBlock, filled: readonly CellRange[]): boolean {
  const value = valueAt(sheet, row, block.time);
  if (typeof value !== 'string' || saysNumber(value)) return false;
  if (headingKinds({ sheet, row, filled }) === null) return false;
  return !sameHeadings(sheet, row, block);
}

function sameHeadings(sheet: BookSheet, row: number, block: HeadedBlock): boolean {
  for (let column = block.firstColumn; column <= block.lastColumn; column++) {
    if (keyAt(sheet, row, column) !== keyAt(sheet, block.headingRow, column)) return false;
  }
  return true;
}

function keyAt(sheet: BookSheet, row: number, column: number): string {
  const value = valueAt(sheet, row, column);
  return typeof value === 'string' ? headingKey(value) : '';
}

/** A QT answer beside a label, or in a column of the log below its last entry: nothing in the row is an entry. */
function isAnswerRow(sheet: BookSheet, row: number, { firstColumn, lastColumn, time, copper }: HeadedBlock): boolean {
  const cells = sheet.rows[row]?.slice(firstColumn, lastColumn + 1) ?? [];
  if (!cells.some(isAnswer) || isTime(sheet.rows[row]?.[time])) return false;
  return cells.every((cell, at) => {
    const column = firstColumn + at;
    if (column === time || cell?.formula !== undefined) return true;
    return column === copper ? !saysNumber(cell?.value ?? null) : !isNumber(cell?.value);
  });
}

function isTime(cell: BookCell | undefined): boolean {
  if (cell === undefined || isAnswer(cell)) return false;
  return isNumber(cell.value) || (typeof cell.value === 'string' && timeIn(cell.value)('').ok);
}

function isNumber(value: unknown): boolean {
  return typeof value === 'number';
}

/** Two words or more and no number: the headings of something else. */
function isWordsAlone(sheet: BookSheet, row: number, { firstColumn, lastColumn, time }: HeadedBlock): boolean {
  let words = 0;
  for (let column = firstColumn; column <= lastColumn; column++) {
    const value = valueAt(sheet, row, column);
    if (value === null) continue;
    if (typeof value !== 'string' || saysNumber(value)) return false;
    if (value.trim() !== '') words++;
  }
  return words > 1 && !isBlankCell(sheet, row, time);
}

/** Whether a time stands further down. */
function goesOn(sheet: BookSheet, from: number, { time }: HeadedBlock, end: number): boolean {
  for (let row = from + 1; row < end; row++) if (saysNumber(valueAt(sheet, row, time))) return true;
  return false;
}

/** A time, or a reading whose time is missing or cannot be read: that is for the audit to say. */
function isEntry(sheet: BookSheet, row: number, { time, copper }: HeadedBlock): boolean {
  return saysNumber(valueAt(sheet, row, time)) || saysNumber(valueAt(sheet, row, copper));
}
