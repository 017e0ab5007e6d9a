import type { Place, Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { isBlank, type Cell } from '../units/cell.js';
import { shown } from '../units/shown.js';
import { parseTime } from '../units/time/parseTime.js';
import { timeOfDay } from '../units/time/timeOfDay.js';

/** The cells of a row that say when: a date and time in one, or a date and its time of day beside it. */
export interface TimeCells {
  readonly date: Cell;
  /** undefined: the range has one column. */
  readonly timeOfDay: Cell | undefined;
}

/** Empty, or the 0 that some hosts send for an empty cell. */
export function isBlankOrZero(cell: Cell): boolean {
  return cell === 0 || isBlank(cell);
}

/** The time of a row as a serial day; null where the row has none. */
export function rowTime(cells: TimeCells, row: number): Result<number | null, Problem> {
  const at: Place = { row };
  if (isBlankOrZero(cells.date)) {
    if (cells.timeOfDay === undefined || isBlankOrZero(cells.timeOfDay)) return ok(null);
    return refuse({ code: 'time-without-date', at, given: shown(cells.timeOfDay) });
  }
  const date = parseTime(cells.date, at);
  if (!date.ok || cells.timeOfDay === undefined) return date;
  const time = timeOfDay(cells.timeOfDay, at);
  if (!time.ok) return time;
  if (time.value > 0 && date.value % 1 !== 0) {
    return refuse({ code: 'two-times-of-day', row, given: shown(cells.timeOfDay) });
  }
  return ok(date.value + time.value);
}
