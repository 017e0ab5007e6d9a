import { dateOfDay, dayFrom1970, twoDigits } from '../../base/calendarDay.js';
import { plainIsoSerial } from '../../base/plainIsoSerial.js';
import { epochSerial } from '../../base/serialFromDate.js';

// The 29 February 1900 that never was is no day in XML: before March 1900 its days are one higher than a workbook's.
const firstCommonSerial = 61;

const form = /^(\d{4,5})-(\d\d)-(\d\d)(?:[T ](\d\d):(\d\d)(?::(\d\d(?:[.,]\d+)?))?)?(?:Z|[+-]\d\d:?\d\d)?$/;

/** A date as XML writes it, in days counted from 1900; undefined for what is no date. A time zone is ignored: a cell keeps its clock time. */
export function serialOfIso(written: string): number | undefined {
  const text = written.trim();
  const plain = plainIsoSerial(text);
  if (plain >= firstCommonSerial) return plain;
  const parts = form.exec(text);
  if (parts === null) return undefined;
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0, second = 0] = parts
    .slice(1)
    .map((part: string | undefined) => Number((part ?? '0').replace(',', '.')));
  const date = dayFrom1970(year, month, day);
  if (Number.isNaN(date)) return undefined;
  return date + epochSerial + (hour * 3600 + minute * 60 + second) / 86_400;
}

/** The first day of year 1 and the last one of year 9999. */
const firstDay = -693_593;
const lastDay = 2_958_465;
const millisecondsOfDay = 86_400_000;

/**
 * A serial day as XML writes it, `2026-03-01` or `2026-03-01T08:30:00`, to the millisecond where it has parts of a
 * second; undefined for a number that is no day of a calendar.
 */
export function isoOfSerial(serial: number): string | undefined {
  if (!(serial >= firstDay && serial <= lastDay)) return undefined;
  const milliseconds = Math.round(serial * millisecondsOfDay);
  const day = Math.floor(milliseconds / millisecondsOfDay);
  const date = dateOfDay(day - epochSerial);
  return Number.isInteger(serial) ? date : `${date}T${clock(milliseconds - day * millisecondsOfDay)}`;
}

function clock(milliseconds: number): string {
  const whole = (size: number): number => Math.floor(milliseconds / size);
  const rest = milliseconds % 1000 === 0 ? '' : `.${String(milliseconds % 1000).padStart(3, '0')}`;
  return `${twoDigits(whole(3_600_000))}:${twoDigits(whole(60_000) % 60)}:${twoDigits(whole(1000) % 60)}${rest}`;
}
