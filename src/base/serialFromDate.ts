import { dayFrom1970 } from './calendarDay.js';

/** The serial of 1970-01-01. Serial 1 is 1900-01-01; the day 1900-02-29 that never was keeps its serial, 60. */
export const epochSerial = 25569;
const lastFalseSerial = 60;

/**
 * Serial day of a calendar date in the 1900 system of spreadsheets; NaN where the date does not exist.
 *
 * Definition: days from 1970-01-01 by the proleptic Gregorian calendar, plus 25569; one less before 1900-03-01.
 *
 * @param year 1900 to 9999
 * @param month 1 to 12
 * @param day 1 to the month's last
 * @returns serial day [days]
 * @example serialFromDate(2026, 1, 1) // = 46023
 */
export function serialFromDate(year: number, month: number, day: number): number {
  if (year < 1900 || year > 9999) return NaN;
  const serial = dayFrom1970(year, month, day) + epochSerial;
  return serial > lastFalseSerial ? serial : serial - 1;
}
