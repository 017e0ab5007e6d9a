import { serialFromDate } from './serialFromDate.js';

/**
 * Serial of the two spellings that fill whole columns, `2026-03-01` and `2026-03-01 08:00` (or T, seconds may follow);
 * NaN for everything else, which its callers read with more patience. A million cells pass here, so no pattern matching.
 *
 * Definition: date part by serialFromDate, plus the time of day as a fraction of 24 hours.
 *
 * @param text the cell
 * @returns serial day [days]
 * @example plainIsoSerial('2026-01-01 12:00') // = 46023.5
 */
export function plainIsoSerial(text: string): number {
  const length = text.length;
  if (length !== 10 && length !== 16 && length !== 19) return NaN;
  if (text.charCodeAt(4) !== hyphen || text.charCodeAt(7) !== hyphen) return NaN;
  const year = twoDigitsAt(text, 0) * 100 + twoDigitsAt(text, 2);
  const date = serialFromDate(year, twoDigitsAt(text, 5), twoDigitsAt(text, 8));
  return length === 10 ? date : date + secondsAt(text, length) / 86400;
}

const hyphen = 45;
const colon = 58;

function secondsAt(text: string, length: number): number {
  const separator = text.charCodeAt(10);
  if ((separator !== 32 && separator !== 84 && separator !== 116) || text.charCodeAt(13) !== colon) return NaN;
  if (length === 19 && text.charCodeAt(16) !== colon) return NaN;
  const hour = twoDigitsAt(text, 11);
  const minute = twoDigitsAt(text, 14);
  const second = length === 19 ? twoDigitsAt(text, 17) : 0;
  return hour < 24 && minute < 60 && second < 60 ? hour * 3600 + minute * 60 + second : NaN;
}

function twoDigitsAt(text: string, at: number): number {
  const tens = text.charCodeAt(at) - 48;
  const ones = text.charCodeAt(at + 1) - 48;
  return tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9 ? tens * 10 + ones : NaN;
}
