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
  // Counted from 0000-03-01, years beginning in March.
  const dayCount = (serial > 60 ? serial : serial + 1) - 25569 + 719468;
  const era = Math.floor(dayCount / 146097);
  const dayOfEra = dayCount - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const monthFromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const day = dayOfYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1;
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return `${String(year).padStart(4, '0')}-${twoDigits(month)}-${twoDigits(day)}`;
}

function twoDigits(x: number): string {
  return String(x).padStart(2, '0');
}
