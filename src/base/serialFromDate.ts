/** Serial 1 is 1900-01-01; the day 1900-02-29 that never was keeps its serial, 60. */
const epochSerial = 25569;
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
  if (year < 1900 || year > 9999 || month < 1 || month > 12 || day < 1 || day > daysInMonth(year, month)) return NaN;
  // Years run from March, so that the leap day is the last of its year.
  const marchYear = month > 2 ? year : year - 1;
  const leapDays = Math.floor(marchYear / 4) - Math.floor(marchYear / 100) + Math.floor(marchYear / 400);
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  const serial = marchYear * 365 + leapDays + dayOfYear - daysToEpoch + epochSerial;
  return serial > lastFalseSerial ? serial : serial - 1;
}

/** Days from 0000-03-01 to 1970-01-01. */
const daysToEpoch = 719468;

function daysInMonth(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}
