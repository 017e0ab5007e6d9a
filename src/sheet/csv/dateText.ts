import { serialFromDate } from '../../base/serialFromDate.js';

/** A date whose text alone may leave the order of day and month ambiguous. */
export interface DateParts {
  readonly parts: readonly [number, number, number];
  readonly mark: string;
  /** The year has two digits. */
  readonly short: boolean;
  /** Fraction of a day; null: the date alone. */
  readonly time: number | null;
}

/** A date that its text alone settles. [serial day] */
interface CertainDate {
  readonly serial: number;
  readonly format: string;
}

const yearFirst = /^(\d{4})([-/.])(\d{1,2})\2(\d{1,2})(?:(?:[Tt]|,?\s+)(.+))?$/;
const numbers = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})(?:,?\s+(.+))?$/;
const weekday = /^(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*[.,]?\s+/i;
const dayAndName = /^(\d{1,2})(?:st|nd|rd|th)?[-\s.]+([a-z]{3,9})[.,]?[-\s]+(\d{4}|\d{2})(?:,?\s+(.+))?$/i;
const nameAndDay = /^([a-z]{3,9})\.?[-\s]+(\d{1,2})(?:st|nd|rd|th)?(?:,\s*|[-\s]+)(\d{4}|\d{2})(?:,?\s+(.+))?$/i;
const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const monthName =
  /^(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)$/i;

/** A longer text is a note. */
const longest = 45;

/** Reads a text as a date, with or without a time of day, or as a time of day alone; null: it is neither. */
export function dateText(written: string): DateParts | CertainDate | null {
  if (written.length > longest) return null;
  const text = written.trim().replace(weekday, '');
  const iso = yearFirst.exec(text);
  if (iso !== null) return certain([iso[1], iso[3], iso[4]], iso[5]);
  const plain = numbers.exec(text);
  if (plain !== null) return partsOf(plain);
  const alone = clockText(text, { takesPoint: false });
  return Number.isNaN(alone) ? namedMonth(text) : { serial: alone, format: 'hh:mm' };
}

function partsOf([, first, mark = '', second, third = '', time]: RegExpExecArray): DateParts | null {
  const day = time === undefined ? null : clockText(time, { takesPoint: true });
  if (day !== null && Number.isNaN(day)) return null;
  return { parts: [Number(first), Number(second), Number(third)], mark, short: third.length === 2, time: day };
}

function namedMonth(text: string): CertainDate | null {
  const dayFirst = dayAndName.exec(text);
  if (dayFirst !== null) return certain([fullYear(dayFirst[3]), monthOf(dayFirst[2]), dayFirst[1]], dayFirst[4]);
  const monthFirst = nameAndDay.exec(text);
  if (monthFirst === null) return null;
  return certain([fullYear(monthFirst[3]), monthOf(monthFirst[1]), monthFirst[2]], monthFirst[4]);
}

function certain(date: readonly unknown[], time: string | undefined): CertainDate | null {
  const [year, month, day] = date.map(Number);
  const serial = serialFromDate(year ?? NaN, month ?? NaN, day ?? NaN);
  const fraction = time === undefined ? 0 : clockText(time, { takesPoint: true });
  if (Number.isNaN(serial + fraction)) return null;
  return { serial: serial + fraction, format: time === undefined ? 'yyyy-mm-dd' : 'yyyy-mm-dd hh:mm' };
}

function monthOf(name = ''): number {
  return monthName.test(name) ? months.indexOf(name.slice(0, 3).toLowerCase()) + 1 : NaN;
}

/** A year as written; two digits below 70 are in this century. */
export function fullYear(digits: string | undefined): number {
  const year = Number(digits);
  if (digits?.length !== 2) return year;
  return year < 70 ? 2000 + year : 1900 + year;
}

const clock = /^(\d{1,2})(?:([:.])(\d{2}))?(?::(\d{2}(?:[.,]\d{1,6})?))?\s*([ap])?\.?(m)?\.?$/i;

interface ClockTerms {
  /** After a date 08.30 is a time; alone it is a number. */
  readonly takesPoint: boolean;
}

/** A time of day such as 08:00, 9:30 PM or 9 pm as a fraction of a day; NaN: it is none. */
function clockText(text: string, { takesPoint }: ClockTerms): number {
  const match = clock.exec(text);
  if (match === null) return NaN;
  const [, hours = '', mark, minutes, seconds = '0', half, m] = match;
  if ((half === undefined) !== (m === undefined)) return NaN;
  if (minutes === undefined && half === undefined) return NaN;
  if (mark === '.' && half === undefined && !takesPoint) return NaN;
  const hour = half === undefined ? Number(hours) : twelveHours(Number(hours), half.toLowerCase());
  const minute = Number(minutes ?? 0);
  const second = Number(seconds.replace(',', '.'));
  return hour < 24 && minute < 60 && second < 60 ? (hour * 3600 + minute * 60 + second) / 86400 : NaN;
}

function twelveHours(hour: number, half: string): number {
  return hour < 1 || hour > 12 ? NaN : (hour % 12) + (half === 'p' ? 12 : 0);
}
