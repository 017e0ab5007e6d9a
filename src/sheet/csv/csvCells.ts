import { columnLetters } from '../address/addressOf.js';
import type { CellValue } from '../cell/cellValue.js';
import type { BookCell } from '../book/book.js';
import { type DateParts, dateText } from './dateText.js';
import { unguardedText } from './guardedText.js';
import { type DecimalMark, measureText, numberText } from './numberText.js';

/** A cell of a csv file as written; rows and columns from 0. */
export interface WrittenCell {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

/** `row 5, column C`. */
export function cellName({ row, column }: Omit<WrittenCell, 'text'>): string {
  return `row ${row + 1}, column ${columnLetters(column)}`;
}

export interface UnclearNumber extends WrittenCell {
  /** The text around the number, such as "<" and " L"; both are '' where the cell holds nothing else. */
  readonly before: string;
  readonly after: string;
  /** May be the decimal mark, or may separate thousands. */
  readonly mark: DecimalMark;
}

export interface UnclearDate extends WrittenCell, DateParts {}

/** What the cells of a column show, and the cells that only the whole file can settle. */
export interface CsvColumn {
  /** The first cell that shows this mark before its decimals. */
  readonly shows: Record<DecimalMark, WrittenCell | null>;
  /** The same for numbers with a unit or a bound, which people type by hand. It counts where no plain number shows a mark. */
  readonly tells: Record<DecimalMark, WrittenCell | null>;
  readonly numbers: UnclearNumber[];
  readonly dates: UnclearDate[];
  /** Headed as a time of day: 16.00 in it is an hour. */
  isClock: boolean;
}

type CellRow = (BookCell | undefined)[];

export interface CsvCells {
  /** Cells that only the whole file can settle are still undefined. */
  readonly rows: (CellRow | undefined)[];
  readonly columns: readonly CsvColumn[];
}

/** Every field of a csv file as a cell, where its text alone settles what it is; the others are listed by column. */
export function csvCells(records: readonly (readonly string[])[]): CsvCells {
  const columns: CsvColumn[] = [];
  const rows = records.map((record, row) => {
    const cells: CellRow = [];
    let isBlank = true;
    for (let column = 0; column < record.length; column++) {
      const text = record[column] ?? '';
      if (text === '' || text.trim() === '') {
        cells.push(undefined);
        continue;
      }
      isBlank = false;
      const own = (columns[column] ??= newColumn());
      cells.push(cellOf(text, own, row, column));
    }
    return isBlank ? undefined : cells;
  });
  return { rows, columns: Array.from(columns, (column: CsvColumn | undefined) => column ?? newColumn()) };
}

function newColumn(): CsvColumn {
  return { shows: { '.': null, ',': null }, tells: { '.': null, ',': null }, numbers: [], dates: [], isClock: false };
}

/** Digits, signs, marks, or a word with a digit somewhere after it; everything else is text. */
const maybeValue = /^\s*[+\-\u2212.,\d<>~\u2264\u2265]|^\s*void\s|^\s*[A-Za-z]{3,9}[.,]?[\s-].*\d/;
const clockHeading = /^\W*times?\b(?!.*\bdate)|\bclock\b/i;
const clockDigits = /^\s*\d{1,2}\.?\d{2}\s*$/;
const errorCode = /^#(?:N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?|NULL!)$/;

function cellOf(text: string, own: CsvColumn, row: number, column: number): BookCell | undefined {
  if (!maybeValue.test(text)) {
    if (clockHeading.test(text) && text.length < 40) own.isClock = true;
    return { value: wordValue(text) };
  }
  if (own.isClock && clockDigits.test(text)) return { value: text };
  const number = numberText(text);
  if (number !== null) {
    const { value, mark, unclear } = number;
    if (unclear !== null) {
      own.numbers.push({ row, column, text, mark: unclear, before: '', after: '' });
      return undefined;
    }
    if (mark !== null && own.shows[mark] === null) own.shows[mark] = { row, column, text };
    return { value };
  }
  const date = dateText(text);
  if (date === null) return measureCell(text, own, row, column);
  if ('serial' in date) return { value: date.serial, format: date.format };
  own.dates.push({ row, column, text, ...date });
  return undefined;
}

const threeDigits = /[,'\u2019\u00a0\u202f]\d{3}(?!\d)|\.\d{3},/;

/** A number with a unit stays a text; its decimal mark is evidence for the file's, and separators of thousands are taken out. */
function measureCell(text: string, own: CsvColumn, row: number, column: number): BookCell | undefined {
  const found = own.isClock ? null : measureText(text);
  if (found === null) return { value: wordValue(text) };
  const { before, number, after, read } = found;
  if (read.unclear !== null) {
    own.numbers.push({ row, column, text: number, mark: read.unclear, before, after });
    return undefined;
  }
  if (read.mark !== null && own.tells[read.mark] === null) own.tells[read.mark] = { row, column, text };
  // Three digits after a comma could be thousands, so the settled number replaces them.
  const isSettled = threeDigits.test(number);
  return { value: isSettled ? `${before}${read.value}${after}` : wordValue(text) };
}

function wordValue(text: string): CellValue {
  if (text === 'TRUE') return true;
  if (text === 'FALSE') return false;
  return errorCode.test(text) ? { type: 'Error', basicValue: text } : unguardedText(text);
}
