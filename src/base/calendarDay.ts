/** Days from 0000-03-01 to 1970-01-01. */
const daysToEpoch = 719468;

/**
 * Days from 1970-01-01 to a calendar date; NaN where the date does not exist.
 *
 * Definition: proleptic Gregorian calendar; years run from March, so that the leap day is the last of its year.
 *
 * @param month 1 to 12
 * @param day 1 to the month's last
 * @example dayFrom1970(2000, 2, 29) // = 11016
 */
export function dayFrom1970(year: number, month: number, day: number): number {
  if (!(month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month))) return NaN;
  const marchYear = month > 2 ? year : year - 1;
  const leapDays = Math.floor(marchYear / 4) - Math.floor(marchYear / 100) + Math.floor(marchYear / 400);
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  return marchYear * 365 + leapDays + dayOfYear - daysToEpoch;
}

function daysInMonth(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

/**
 * The date of a day counted from 1970-01-01: `2026-03-04`.
 *
 * Definition: inverse of dayFrom1970.
 *
 * @example dateOfDay(11016) // = '2000-02-29'
 */
export function dateOfDay(dayFrom1970: number): string {
  const dayCount = dayFrom1970 + daysToEpoch;
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

export function twoDigits(x: number): string {
  return String(x).padStart(2, '0');
}
