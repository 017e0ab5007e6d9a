import type { CellValue } from '../host/cellValue.js';
import type { BookCell } from '../workbook/book.js';
import type { CsvColumn } from './csvColumn.js';
import { dateText } from './dateText.js';
import { numberText } from './numberText.js';
import { unguardedText } from './unguardedText.js';

export type CellRow = (BookCell | undefined)[];

export interface CsvCells {
  /** Cells that the whole file has to settle are undefined yet. */
  readonly rows: (CellRow | undefined)[];
  readonly columns: readonly CsvColumn[];
}

/** Every field of a csv file as the cell it plainly is; those that the whole file must settle are listed by column. */
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
  return { shows: { '.': null, ',': null }, numbers: [], dates: [], isClock: false };
}

/** Digits, signs, marks, or a letter with a digit after it somewhere: the rest is a text at first sight. */
const maybeValue = /^\s*[+\-\u2212.,\d]|^\s*[A-Za-z]{3,9}[.,]?[\s-].*\d/;
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
      own.numbers.push({ row, column, text, mark: unclear });
      return undefined;
    }
    if (mark !== null && own.shows[mark] === null) own.shows[mark] = { row, column, text };
    return { value };
  }
  const date = dateText(text);
  if (date === null) return { value: wordValue(text) };
  if ('serial' in date) return { value: date.serial, format: date.format };
  own.dates.push({ row, column, text, ...date });
  return undefined;
}

function wordValue(text: string): CellValue {
  if (text === 'TRUE') return true;
  if (text === 'FALSE') return false;
  return errorCode.test(text) ? { type: 'Error', basicValue: text } : unguardedText(text);
}
