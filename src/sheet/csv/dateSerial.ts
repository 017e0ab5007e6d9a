import { serialFromDate } from '../../base/serialFromDate.js';
import { type DateParts, fullYear } from './dateText.js';

export type DateOrder = 'day first' | 'month first' | 'year first';

/** The orders of a date. The year comes first only in two-digit parts between hyphens. */
export const dateOrderNames: readonly DateOrder[] = ['day first', 'month first', 'year first'];

/** A date in one of the orders as a serial day, its time of day added; NaN: there is no such day. */
export function dateSerial({ parts: [first, second, third], mark, short, time }: DateParts, order: DateOrder): number {
  const year = (part: number): number => (short ? fullYear(String(part).padStart(2, '0')) : part);
  switch (order) {
    case 'day first':
      return serialFromDate(year(third), second, first) + (time ?? 0);
    case 'month first':
      return serialFromDate(year(third), first, second) + (time ?? 0);
    case 'year first':
      return short && mark === '-' ? serialFromDate(year(first), second, third) + (time ?? 0) : NaN;
  }
}
