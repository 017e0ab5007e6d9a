import { FileProblem } from '../zip/fileProblem.js';
import { columnLetters } from '../address/addressOf.js';
import { cellName, type CsvColumn, type UnclearDate } from './csvCells.js';
import { dateOrderNames, dateSerial, type DateOrder } from './dateSerial.js';

export interface FoundOrder {
  readonly order: DateOrder;
  readonly why: 'asked' | 'a part over 12' | 'another column' | 'order in time' | 'points' | 'all alike';
  /** The cell that shows it, or the first of the column. */
  readonly cell: UnclearDate;
}

/** The order of day and month in each column; null where no date needs one. A file that leaves it ambiguous is refused. */
export function dateOrders(columns: readonly CsvColumn[], asked: DateOrder | null): readonly (FoundOrder | null)[] {
  const possible = columns.map(({ dates }) => possibleOrders(dates));
  const settled = new Set(possible.flatMap((each) => (each?.orders.length === 1 ? each.orders : [])));
  return possible.map((each, column) => {
    if (each === null) return null;
    const { orders, cell } = each;
    if (asked === null) return orderOf(each, columns[column]?.dates ?? [], settled);
    if (!orders.includes(asked)) throw new FileProblem(notAsAsked(cell, asked));
    return { order: asked, why: 'asked', cell };
  });
}

function orderOf(
  { orders, cell }: PossibleOrders,
  dates: readonly UnclearDate[],
  elsewhere: ReadonlySet<DateOrder>,
): FoundOrder {
  const [first] = orders;
  if (mayBeginWithYear(dates)) throw new FileProblem(unclear(cell, [...orders, 'year first']));
  if (first !== undefined && orders.length === 1) return { order: first, why: 'a part over 12', cell };
  const [inTime, ...others] = orders.filter((order) => isInTimeOrder(dates, order));
  const only = others.length === 0 ? inTime : undefined;
  const [other] = elsewhere;
  if (other !== undefined && elsewhere.size === 1 && orders.includes(other) && (only ?? other) === other) {
    return { order: other, why: 'another column', cell };
  }
  // Nobody writes the month first and separates with points.
  const pointed = dates.every(({ mark }) => mark === '.');
  if (pointed && (only ?? 'day first') === 'day first') return { order: 'day first', why: 'points', cell };
  if (only !== undefined && !pointed && elsewhere.size === 0) return { order: only, why: 'order in time', cell };
  const isOneDay = dates.every((date) => new Set(orders.map((order) => dateSerial(date, order))).size === 1);
  if (first !== undefined && isOneDay) return { order: first, why: 'all alike', cell };
  throw new FileProblem(unclear(cell, orders));
}

/** 26/03/13, 26/03/14, 26/03/15: a log goes on from day to day, not from year to year on 26 March. */
function mayBeginWithYear(dates: readonly UnclearDate[]): boolean {
  const [firsts, lasts] = [0, 2].map((at) => new Set(dates.map(({ parts }) => parts[at])));
  const fits = dates.every(
    ({ parts: [first, month, day], mark, short }) =>
      short && mark !== '-' && first > 12 && month <= 12 && day >= 1 && day <= 31,
  );
  return fits && firsts?.size === 1 && lasts !== undefined && lasts.size > 1;
}

/** Oldest or newest first. */
function isInTimeOrder(dates: readonly UnclearDate[], order: DateOrder): boolean {
  let [rises, falls] = [false, false];
  let before = NaN;
  for (const date of dates) {
    const serial = dateSerial(date, order);
    if (serial > before) rises = true;
    else if (serial < before) falls = true;
    if (!Number.isNaN(serial)) before = serial;
  }
  return !(rises && falls);
}

function unclear(cell: UnclearDate, orders: readonly DateOrder[]): string {
  const readings = dateOrderNames.filter((order) => orders.includes(order)).join(' or ');
  return (
    `In ${cellName(cell)} the date "${cell.text.trim()}" may be ${readings}, and nothing in column ` +
    `${columnLetters(cell.column)} says which; write dates like 2026-03-01, or say whether the day or the month comes first`
  );
}

function notAsAsked(cell: UnclearDate, order: DateOrder): string {
  return `The date "${cell.text.trim()}" in ${cellName(cell)} is not ${order}, although you said so`;
}

interface PossibleOrders {
  /** One or more that give a day for every date of the column. */
  readonly orders: readonly DateOrder[];
  /** The cell that settles it, else the first. */
  readonly cell: UnclearDate;
}

/** The orders in which all dates of a column can be read; null where it has none. Dates that contradict each other are refused. */
function possibleOrders(dates: readonly UnclearDate[]): PossibleOrders | null {
  let orders: readonly DateOrder[] = [];
  let cell: UnclearDate | null = null;
  for (const date of dates) {
    const own = dateOrderNames.filter((order) => !Number.isNaN(dateSerial(date, order)));
    // A date such as 31 February stays text.
    if (own.length === 0) continue;
    if (cell === null) [orders, cell] = [own, date];
    const both = orders.filter((order) => own.includes(order));
    if (both.length === 0) throw new FileProblem(contradiction(cell, orders, date, own));
    if (both.length < orders.length) [orders, cell] = [both, date];
  }
  return cell === null ? null : { orders, cell };
}

function contradiction(
  first: UnclearDate,
  ofFirst: readonly DateOrder[],
  second: UnclearDate,
  ofSecond: readonly DateOrder[],
): string {
  const said = (cell: UnclearDate, orders: readonly DateOrder[]): string =>
    `"${cell.text.trim()}" in row ${cell.row + 1} is ${orders.join(' or ')}`;
  return `The dates of one column contradict each other: ${said(first, ofFirst)}, ${said(second, ofSecond)} (${cellName(second)}); write all of them like 2026-03-14`;
}
