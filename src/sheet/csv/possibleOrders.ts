import { FileProblem } from '../zip/fileProblem.js';
import { cellName } from './cellName.js';
import type { UnclearDate } from './csvColumn.js';
import { dateOrderNames, dateSerial, type DateOrder } from './dateSerial.js';

export interface PossibleOrders {
  /** One or more that give a day for every date of the column. */
  readonly orders: readonly DateOrder[];
  /** The cell that settles it, else the first. */
  readonly cell: UnclearDate;
}

/** The orders in which all dates of a column can be read; null where it has none. Two that contradict are refused. */
export function possibleOrders(dates: readonly UnclearDate[]): PossibleOrders | null {
  let orders: readonly DateOrder[] = [];
  let cell: UnclearDate | null = null;
  for (const date of dates) {
    const own = dateOrderNames.filter((order) => !Number.isNaN(dateSerial(date, order)));
    // The 31st of February stays a text.
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
