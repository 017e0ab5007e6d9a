import type { Place, Problem } from '../../result/problem.js';
import { ok, refuse, type Result } from '../../result/result.js';
import { isBlank, type Cell } from '../cell.js';
import { misplaced } from '../parseQuantity.js';
import { serialDay, type SerialDay } from '../quantity.js';
import { shown } from '../shown.js';
import { plainIsoSerial } from '../../../base/plainIsoSerial.js';
import { serialFromDate } from '../../../base/serialFromDate.js';
import { timeOfDayText } from './timeOfDay.js';

/** The first serial after 9999-12-31. */
export const serialEnd = 2958466;

const dated = /^(\d{4})-(\d{1,2})-(\d{1,2})(?:(?:T|\s+)(.+))?$/i;
const zone = /\d\s*(?:z|utc|gmt|[+-]\d{2}(?::?\d{2})?)$/i;

/**
 * A point in time: a serial of the 1900 system from 1 on, or ISO text without a zone.
 *
 * Definition: whole days since 1899-12-31 (with the 1900-02-29 of spreadsheets) plus the time of day.
 *
 * @param cell the cell
 * @param at where it stands, for the refusal
 * @returns serial day [days]
 */
export function parseTime(cell: Cell, at: Place): Result<SerialDay, Problem> {
  if (cell === null || isBlank(cell)) return refuse({ code: 'blank', at, kind: 'time' });
  if (typeof cell === 'object') return refuse(misplaced(cell, at));
  if (typeof cell === 'number') return serial(cell, cell, at);
  if (typeof cell !== 'string') return refuse({ code: 'not-a-time', at, given: shown(cell) });
  return parseText(cell, at);
}

function serial(value: number, cell: Cell, at: Place): Result<SerialDay, Problem> {
  if (value >= 1 && value < serialEnd) return ok(serialDay(value));
  const code = value >= 0 && value < 1 ? 'time-without-date' : 'not-a-time';
  return refuse({ code, at, given: shown(cell) });
}

function parseText(text: string, at: Place): Result<SerialDay, Problem> {
  const plain = text.trim();
  const quick = plainIsoSerial(plain);
  if (!Number.isNaN(quick)) return ok(serialDay(quick));
  const given = shown(text);
  const match = dated.exec(plain);
  if (match === null) {
    // "0900" is a time of day and would be a day in 1902 as a serial.
    if (!Number.isNaN(timeOfDayText(plain))) return refuse({ code: 'time-without-date', at, given });
    const value = /^\d+(?:\.\d+|,(?!\d{3}$)\d+)?$/.test(plain) ? Number(plain.replace(',', '.')) : NaN;
    return Number.isNaN(value) ? refuse({ code: 'not-a-time', at, given }) : serial(value, text, at);
  }
  const date = serialFromDate(Number(match[1]), Number(match[2]), Number(match[3]));
  const time = match[4] === undefined ? 0 : timeOfDayText(match[4]);
  if (!Number.isNaN(date + time)) return ok(serialDay(date + time));
  return refuse({ code: match[4] !== undefined && zone.test(match[4]) ? 'time-with-zone' : 'not-a-time', at, given });
}
