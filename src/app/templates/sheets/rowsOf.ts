import { serialFromDate } from '../../../engine/index.js';
import type { Content } from '../plan/index.js';

/**
 * Rows written as lines, a column between two bars. A number is a number, a time such as `2026-03-01 08:00` a serial day,
 * nothing an empty cell.
 */
export function rowsOf(kept: string): Content[][] {
  return kept
    .trim()
    .split('\n')
    .map((line) => line.split('|').map((cell) => contentOf(cell.trim())));
}

function contentOf(written: string): Content {
  if (written === '') return null;
  if (/^\d{4}-\d\d-\d\d \d\d:\d\d$/.test(written)) return serialOf(written);
  return Number.isNaN(Number(written)) ? written : Number(written);
}

/** 1970-01-01. A time of day counted from near it has all its digits. */
const epoch = 25_569;

/** The serial day of a time written `2026-03-01 08:00`, as a spreadsheet stores it. */
export function serialOf(text: string): number {
  const [, ...parts] = /^(\d{4})-(\d\d)-(\d\d) (\d\d):(\d\d)$/.exec(text) ?? [];
  const [year = NaN, month = NaN, day = NaN, hour = NaN, minute = NaN] = parts.map(Number);
  const days = serialFromDate(year, month, day) - epoch;
  if (Number.isNaN(days + hour + minute)) throw new Error(`not a time: ${text}`);
  return (days * 1440 + hour * 60 + minute) / 1440 + epoch;
}
