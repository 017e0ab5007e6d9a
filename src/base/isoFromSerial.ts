import { dateOfDay, twoDigits } from './calendarDay.js';
import { epochSerial } from './serialFromDate.js';

/**
 * A serial day as people write it in a log, to the minute: `2026-03-04 08:00`.
 *
 * Definition: inverse of serialFromDate, the time of day rounded to the nearest minute.
 *
 * @param serial serial day of the 1900 system [days]
 * @returns date and time of the wall clock
 * @example isoFromSerial(46023.5) // = '2026-01-01 12:00'
 */
export function isoFromSerial(serial: number): string {
  const minutes = Math.round(serial * 1440);
  const day = Math.floor(minutes / 1440);
  const minute = minutes - day * 1440;
  return `${isoDate(day)} ${twoDigits(Math.floor(minute / 60))}:${twoDigits(minute % 60)}`;
}

function isoDate(serial: number): string {
  if (serial === 60) return '1900-02-29';
  return dateOfDay((serial > 60 ? serial : serial + 1) - epochSerial);
}
