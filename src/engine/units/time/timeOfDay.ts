import type { Place, Problem } from '../../result/problem.js';
import { ok, refuse, type Result } from '../../result/result.js';
import { isBlank, type Cell } from '../cell.js';
import { misplaced } from '../parseQuantity.js';
import { shown } from '../shown.js';

const clock = /^(\d{1,2})[:.](\d{2})(?::(\d{2}(?:\.\d+)?))?\s*(am|pm)?$/;
const hourAndHalf = /^(\d{1,2})\s*(am|pm)$/;
const fourDigits = /^(\d{2})(\d{2})$/;

/**
 * A time of day as a fraction of 24 hours: a serial below 1, or `08:00`, `9:30 PM`, `0900`, `16.00`; blank is midnight.
 *
 * Definition: (3600 h + 60 min + s) ÷ 86400.
 *
 * @param cell the cell
 * @param at where it stands, for the refusal
 * @returns fraction of a day [days]
 */
export function timeOfDay(cell: Cell, at: Place): Result<number, Problem> {
  if (cell === null || isBlank(cell)) return ok(0);
  if (typeof cell === 'object') return refuse(misplaced(cell, at));
  if (typeof cell === 'number' && cell >= 0 && cell < 1) return ok(cell);
  const fraction = typeof cell === 'string' ? timeOfDayText(cell) : NaN;
  return Number.isNaN(fraction) ? refuse({ code: 'not-a-time-of-day', at, given: shown(cell) }) : ok(fraction);
}

/** The fraction of a day that a text names, NaN if it names none. */
export function timeOfDayText(text: string): number {
  const plain = text
    .trim()
    .toLowerCase()
    .replace(/\b([ap])\.m\.?$/, '$1m');
  const match = clock.exec(plain) ?? fourDigits.exec(plain);
  // "0.25" may be a quarter of a day or 25 past midnight.
  if (match !== null && !/^0\.\d\d$/.test(plain)) return dayFraction(match[1], match[2], match[3], match[4]);
  const hour = hourAndHalf.exec(plain);
  if (hour !== null) return dayFraction(hour[1], '0', undefined, hour[2]);
  return /^0?\.\d{3,}$/.test(plain) || /^0?\.\d$/.test(plain) ? Number(plain) : NaN;
}

function dayFraction(hourText = '', minuteText = '', secondText = '0', half?: string): number {
  const minute = Number(minuteText);
  const second = Number(secondText);
  let hour = Number(hourText);
  if (half !== undefined) {
    if (hour < 1 || hour > 12) return NaN;
    hour = (hour % 12) + (half === 'pm' ? 12 : 0);
  }
  return hour < 24 && minute < 60 && second < 60 ? (hour * 3600 + minute * 60 + second) / 86400 : NaN;
}
