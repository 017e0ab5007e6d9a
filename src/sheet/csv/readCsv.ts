import { sheetLimits } from '../address/sheetLimits.js';
import type { Book } from '../book/book.js';
import { FileProblem } from '../zip/fileProblem.js';
import { csvCells, type CsvCells } from './csvCells.js';
import { csvRecords, type CsvRecords } from './csvRecords.js';
import { csvRemarks } from './csvRemarks.js';
import { dateOrders, type FoundOrder } from './dateOrders.js';
import { dateSerial } from './dateSerial.js';
import { decimalMarks, type DecimalMarks } from './decimalMarks.js';
import { decodedText } from './decodedText.js';
import { delimiterIn } from './delimiterIn.js';
import { numberBy } from './numberText.js';
import { refuseTornNumbers } from './refuseTornNumbers.js';

/** What the owner of a csv file says about it, so that it need not be worked out. */
export interface CsvOptions {
  /** One character. */
  readonly delimiter?: string;
  readonly decimal?: 'point' | 'comma';
  readonly dates?: 'day first' | 'month first';
}

const mostBytes = 64 * 1024 * 1024;
const { rows: mostRows, columns: mostColumns } = sheetLimits;
const mostFields = 10_000_000;

/** A first line such as `sep=;` names the delimiter and does not count as a row. */
const separatorLine = /^sep=([^\r\n])[ ,;\t]*(?:\r\n|\r|\n|$)/i;

/**
 * A csv file as a book of one sheet, a row for each record. The delimiter, the decimal mark and the order
 * of day and month are worked out from the whole file and reported in the remarks; a file that leaves one of them
 * ambiguous is refused unless the options say it. Formulas are read as text.
 */
export function readCsv(bytes: Uint8Array, name: string, options: CsvOptions = {}): Book {
  if (bytes.length > mostBytes)
    throw new FileProblem('The file is over 64 MB, too large for a log; give the log alone');
  const { text, encoding } = decodedText(bytes);
  const line = separatorLine.exec(text);
  const from = line?.[0].length ?? 0;
  const isTabs = /\.(?:tsv|tab)$/i.test(name) && text.includes('\t');
  const delimiter = options.delimiter ?? line?.[1] ?? (isTabs ? '\t' : delimiterIn(text, from));
  const read = csvRecords(text, { delimiter, from, most: mostRows + 1 });
  refuseUnfit(read);
  if (delimiter === ',' && options.decimal === undefined) refuseTornNumbers(read.records);
  const cells = csvCells(read.records);
  const { columns } = cells;
  const asked = options.decimal === undefined ? null : options.decimal === 'comma' ? ',' : '.';
  const decimals = decimalMarks({ columns, delimiter, asked });
  const orders = dateOrders(columns, options.dates ?? null);
  settle(cells, decimals, orders);
  const found = {
    encoding,
    delimiter,
    decimals,
    orders,
    columns,
    overLines: read.overLines,
    hasSeparatorLine: line !== null,
  };
  const sheet = { name: sheetName(name), hidden: false, rows: cells.rows, merged: [], widths: [] };
  return { kind: 'csv', sheets: [sheet], names: [], tables: [], date1904: false, remarks: csvRemarks(found) };
}

function refuseUnfit({ records, unclosed }: CsvRecords): void {
  if (unclosed !== null) {
    throw new FileProblem(
      `In row ${unclosed + 1} a quoted field never ends; close it with ", or write "" for a quote in it`,
    );
  }
  if (records.length > mostRows)
    throw new FileProblem(`The file has over ${mostRows} rows, more than a sheet holds; split it`);
  let fields = 0;
  for (const [row, { length }] of records.entries()) {
    if (length > mostColumns) {
      throw new FileProblem(
        `Row ${row + 1} has ${length} fields, more than the ${mostColumns} columns of a sheet; is it a csv file?`,
      );
    }
    fields += length;
  }
  if (fields > mostFields)
    throw new FileProblem(`The file has ${fields} fields, over ${mostFields}; give the log alone`);
}

/** Fills in what the whole file has settled. */
function settle({ rows, columns }: CsvCells, { marks }: DecimalMarks, orders: readonly (FoundOrder | null)[]): void {
  for (const [index, { numbers, dates }] of columns.entries()) {
    for (const { row, column, text, before, after } of numbers) {
      const cells = rows[row];
      const value = numberBy(text, marks[index] ?? '.');
      const isAlone = before === '' && after === '';
      if (cells !== undefined) cells[column] = { value: isAlone ? value : `${before}${value}${after}` };
    }
    const order = orders[index]?.order;
    for (const date of dates) {
      const serial = order === undefined ? NaN : dateSerial(date, order);
      const format = date.time === null ? 'yyyy-mm-dd' : 'yyyy-mm-dd hh:mm';
      const cells = rows[date.row];
      if (cells !== undefined)
        cells[date.column] = Number.isNaN(serial) ? { value: date.text } : { value: serial, format };
    }
  }
}

const longestName = 31;

/** The file's name without its ending, as a sheet may be named. */
function sheetName(file: string): string {
  const [base = ''] = file.split(/[\\/]/).slice(-1);
  const name = base
    .replace(/\.[^.]*$/, '')
    .replace(/[[\]:*?\p{Cc}]/gu, ' ')
    .trim()
    .slice(0, longestName);
  return name === '' ? 'Sheet1' : name;
}
