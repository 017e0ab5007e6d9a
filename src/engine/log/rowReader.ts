import type { Problem } from '../result/problem.js';
import type { Cell } from '../units/cell.js';
import { shown } from '../units/shown.js';
import { parseReading } from './parseReading.js';
import type { Level } from './reading.js';
import type { ReadingSink } from './readingColumns.js';
import { isBlankOrZero, rowTime } from './rowTime.js';

/** The cells of a row as the host gives them. */
interface RawRow {
  readonly date: unknown;
  /** undefined: the times stand in one column. */
  readonly timeOfDay: unknown;
  readonly reading: unknown;
  readonly row: number;
}

/** What a time and a level alone do not say. */
interface RowMarks {
  readonly odd: Map<number, Level>;
  readonly zeroRows: number[];
  hasBlanks: boolean;
}

/** Reads the rows that need patience. */
export class RowReader {
  readonly marks: RowMarks = { odd: new Map(), zeroRows: [], hasBlanks: false };

  constructor(
    private readonly sink: ReadingSink,
    private readonly cellOf: (raw: unknown) => Cell,
  ) {}

  /** The problem a row has, or null once it is read or rightly left out. */
  read({ date, timeOfDay, reading, row }: RawRow): Problem | null {
    const time = { date: this.cellOf(date), timeOfDay: timeOfDay === undefined ? undefined : this.cellOf(timeOfDay) };
    const cell = this.cellOf(reading);
    if ([time.date, time.timeOfDay, cell].some(isEmptyCell)) this.marks.hasBlanks = true;
    const when = rowTime(time, row);
    if (!when.ok) return when.problem;
    if (when.value === null && isBlankOrZero(cell)) return null;
    const parsed = parseReading(cell, { row });
    if (!parsed.ok) return parsed.problem;
    const level = parsed.value;
    if (level.kind !== 'level') return null;
    if (when.value === null) return { code: 'reading-without-time', row, given: shown(cell) };
    this.sink.add(when.value, level.low, row);
    if (level.approximate || level.high !== level.low) this.marks.odd.set(row, level);
    if (cell === 0) this.marks.zeroRows.push(row);
    return null;
  }
}

function isEmptyCell(cell: Cell | undefined): boolean {
  return cell === null || cell === '';
}
