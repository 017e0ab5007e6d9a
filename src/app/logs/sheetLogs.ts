import { type Book, type BookSheet, type CellRange, isInside } from '../../sheet/index.js';
import { columnKindOf } from './headingKinds.js';
import { filledRanges } from './filledRanges.js';
import type { FoundLog } from './found.js';
import { type HeadedBlock, headedBlocks } from './headedBlocks.js';
import { headedRange } from './headedRange.js';
import { isAnswerTable } from './isAnswerTable.js';
import { tableLog } from './tableLog.js';
import { isAnswer, valueAt, writtenText } from './cellsAt.js';
import { systemKey } from '../../engine/index.js';

interface SheetWithCards {
  readonly book: Book;
  readonly sheet: BookSheet;
  /** Of the cards on it. */
  readonly cards: readonly CellRange[];
}

/** Headings are looked for so far down; a further log may follow below one that was found. */
const searchedRows = 100;

/** The logs of one sheet: its named tables first, then others from top to bottom. */
export function sheetLogs({ book, sheet, cards }: SheetWithCards): FoundLog[] {
  const filled = filledRanges(sheet);
  const tables = book.tables.filter((table) => table.sheet === sheet.name);
  // A column of a log may be filled by an array formula; a QT table is a block of its own.
  const answers = filledRanges(sheet, isAnswer);
  const blocks = [...cards, ...answers, ...tables.map(({ range }) => range)];
  const ranges = tables.flatMap((table) => tableLog({ sheet, table, filled, blocks }) ?? []);
  let searched = Math.min(searchedRows, sheet.rows.length);
  for (let row = 0; row < searched; row++) {
    for (const block of headedBlocks({ sheet, row, filled })) {
      const isOnCard = cards.some((card) => isInside(card, row, block.time) || isInside(card, row, block.copper));
      if (isOnCard || ranges.some((range) => meets(range, block)) || isAnswerTable(sheet, block, filled)) continue;
      const range = headedRange({ sheet, block: withoutCards(sheet, block, cards), filled, blocks });
      ranges.push(range);
      searched = Math.min(sheet.rows.length, Math.max(searched, range.lastRow + searchedRows));
    }
  }
  return ranges.map((range) => ({ sheet: sheet.name, range, systems: systemsOf(sheet, range) }));
}

function meets(range: CellRange, { headingRow, firstColumn, lastColumn }: HeadedBlock): boolean {
  const isBeside = lastColumn < range.firstColumn || range.lastColumn < firstColumn;
  return range.firstRow <= headingRow && headingRow <= range.lastRow && !isBeside;
}

/** A card that touches the side of a log is not one of its columns; below a heading of the log it is another block. */
function withoutCards(sheet: BookSheet, block: HeadedBlock, cards: readonly CellRange[]): HeadedBlock {
  let { firstColumn, lastColumn } = block;
  const [inner, outer] = [Math.min(block.time, block.copper), Math.max(block.time, block.copper)];
  for (const card of cards) {
    if (card.lastRow < block.headingRow || !isBeside(sheet, block.headingRow, card)) continue;
    if (card.firstColumn > outer && card.firstColumn <= lastColumn) lastColumn = card.firstColumn - 1;
    if (card.lastColumn < inner && card.lastColumn >= firstColumn) firstColumn = card.lastColumn + 1;
  }
  return { ...block, firstColumn, lastColumn };
}

function isBeside(sheet: BookSheet, headingRow: number, card: CellRange): boolean {
  if (card.firstRow <= headingRow) return true;
  for (let column = card.firstColumn; column <= card.lastColumn; column++) {
    if (columnKindOf(writtenText(sheet, headingRow, column)) !== null) return false;
  }
  return true;
}

/** The systems that the rows of a log name, as first written, in the order in which they appear. */
function systemsOf(sheet: BookSheet, { firstRow, firstColumn, lastRow, lastColumn }: CellRange): string[] {
  let column = firstColumn;
  while (column <= lastColumn && columnKindOf(writtenText(sheet, firstRow, column)) !== 'system') column++;
  if (column > lastColumn) return [];
  const heading = systemKey(writtenText(sheet, firstRow, column));
  const names = new Map<string, string>();
  for (let row = firstRow + 1; row <= lastRow; row++) {
    const value = valueAt(sheet, row, column);
    if (typeof value !== 'string' && typeof value !== 'number') continue;
    const name = String(value).trim();
    const key = systemKey(name);
    if (key !== '' && key !== heading && !names.has(key)) names.set(key, name);
  }
  return [...names.values()];
}
