import type { Problem } from '../../result/problem.js';
import type { Cell } from '../../units/cell.js';
import { isBlank } from '../../units/cell.js';
import { plainIsoSerial } from '../../../base/plainIsoSerial.js';
import { serialEnd } from '../../units/time/parseTime.js';
import { isBlankOrZero, rowTime } from '../rowTime.js';

interface TimeColumns {
  readonly date: number;
  /** null: no column of times of day beside the dates. */
  readonly timeOfDay: number | null;
}

interface RowTime {
  /** [serial day] */
  readonly when: number;
  readonly dateOnly: boolean;
}

/** Reads the time of one row after another; a date written only on the first row of a day holds until the next. */
export class TimeReader {
  private lastDate: Cell = null;

  constructor(
    private readonly columns: TimeColumns,
    private readonly cellOf: (raw: unknown) => Cell,
  ) {}

  /** The time of a row that needs no second look, else NaN. */
  readPlain(cells: readonly unknown[]): number {
    if (this.columns.timeOfDay !== null) return NaN;
    const raw = cells[this.columns.date];
    const plain = typeof raw === 'number' ? raw : typeof raw === 'string' ? plainIsoSerial(raw) : NaN;
    if (!(plain >= 1 && plain < serialEnd)) return NaN;
    this.lastDate = plain;
    return plain;
  }

  read(cells: readonly unknown[], row: number): RowTime | Problem {
    const { date, timeOfDay } = this.columns;
    return this.readSlowly(
      this.cellOf(cells[date]),
      timeOfDay === null ? undefined : this.cellOf(cells[timeOfDay]),
      row,
    );
  }

  private readSlowly(written: Cell, time: Cell | undefined, row: number): RowTime | Problem {
    const carried = isBlankOrZero(written);
    const date = carried ? this.wholeDate(time) : written;
    const when = rowTime({ date, timeOfDay: time }, row);
    if (!when.ok) return when.problem;
    if (when.value === null) return { code: 'row-without-time', row };
    if (!carried)
      this.lastDate = Math.floor(when.value) === when.value || time === undefined ? when.value : Math.floor(when.value);
    return { when: when.value, dateOnly: when.value % 1 === 0 && (time === undefined || isBlank(time)) };
  }

  /** The date above; with a time of day of its own the row takes only the day of it. */
  private wholeDate(time: Cell | undefined): Cell {
    return typeof this.lastDate === 'number' && time !== undefined ? Math.floor(this.lastDate) : this.lastDate;
  }
}
