import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { isBlank, type Cell } from '../units/cell.js';
import { shown } from '../units/shown.js';
import { serialEnd } from '../units/time/parseTime.js';
import { plainIsoSerial } from '../units/time/plainIsoSerial.js';
import { ColumnWriter } from './columnWriter.js';
import { isHeadingText } from './headingWords.js';
import { parallelRanges, type RawRange } from './parallelRanges.js';
import { parseReading } from './parseReading.js';
import { plainLevel } from './plainLevel.js';
import { highestLevel } from './reading.js';
import type { ReadingColumns } from './readingColumns.js';
import { isBlankOrZero, rowTime } from './rowTime.js';

export interface ReadingRanges {
  readonly when: RawRange;
  readonly copper: RawRange;
  /** Turns what the host puts into a cell into a plain cell; numbers and texts never need it. */
  readonly cellOf: (raw: unknown) => Cell;
}

/**
 * The readings in two ranges of the same rows. Blank rows and a first row of headings are left out; every other row is
 * a reading, a time without a test, or the refusal of the whole, which names the row.
 *
 * Definition: see the conventions of the cell functions for readings, times, ranges, and blank or zero.
 */
export function readReadings({ when, copper, cellOf }: ReadingRanges): Result<ReadingColumns, Problem> {
  const ranges = parallelRanges({ name: 'when', range: when }, { name: 'copper', range: copper });
  if (!ranges.ok) return ranges;
  const [times = [], levels = []] = ranges.value;
  const writer = new ColumnWriter(levels.length);
  const twoColumns = times[0]?.length === 2;
  const first = isHeadingRow(times, levels, cellOf) ? 1 : 0;
  for (let index = first; index < levels.length; index++) {
    const date = times[index]?.[0];
    const reading = levels[index]?.[0];
    const bothNumbers = !twoColumns && typeof date === 'number' && typeof reading === 'number';
    const serial = bothNumbers ? date : twoColumns ? plainPair(date, times[index]?.[1]) : plainTime(date);
    const level = bothNumbers ? reading : plainReading(reading);
    if (serial >= 1 && serial < serialEnd && level > 0 && level <= highestLevel) {
      writer.add(serial, level, index + 1);
      continue;
    }
    const cells = { date: cellOf(date), timeOfDay: twoColumns ? cellOf(times[index]?.[1]) : undefined };
    const problem = addRow(writer, cells, cellOf(reading), index + 1);
    if (problem !== null) return refuse(problem);
  }
  return ok(writer.columns());
}

/** The serial of a cell that needs no second look, else NaN. */
function plainTime(cell: unknown): number {
  return typeof cell === 'number' ? cell : typeof cell === 'string' ? plainIsoSerial(cell) : NaN;
}

function plainReading(cell: unknown): number {
  return typeof cell === 'number' ? cell : typeof cell === 'string' ? plainLevel(cell) : NaN;
}

function plainPair(date: unknown, timeOfDay: unknown): number {
  if (typeof timeOfDay !== 'number' || timeOfDay < 0 || timeOfDay >= 1) return NaN;
  const day = plainTime(date);
  return day % 1 === 0 ? day + timeOfDay : NaN;
}

/** A row that needs patience: the problem it has, or null once it is added or rightly left out. */
function addRow(
  writer: ColumnWriter,
  time: { date: Cell; timeOfDay: Cell | undefined },
  reading: Cell,
  row: number,
): Problem | null {
  if (isEmptyCell(time.date) || isEmptyCell(reading) || (time.timeOfDay !== undefined && isEmptyCell(time.timeOfDay))) {
    writer.hasBlanks = true;
  }
  const when = rowTime(time, row);
  if (!when.ok) return when.problem;
  if (when.value === null && isBlankOrZero(reading)) return null;
  const parsed = parseReading(reading, { row });
  if (!parsed.ok) return parsed.problem;
  const level = parsed.value;
  if (level.kind === 'untested' || level.kind === 'void') return null;
  if (when.value === null) return { code: 'reading-without-time', row, given: shown(reading) };
  writer.add(when.value, level.low, row);
  if (level.approximate || level.high !== level.low) writer.odd.set(row, level);
  if (reading === 0) writer.zeroRows.push(row);
  return null;
}

function isEmptyCell(cell: Cell): boolean {
  return cell === null || cell === '';
}

function isHeadingRow(times: RawRange, levels: RawRange, cellOf: (raw: unknown) => Cell): boolean {
  const cells = [...(times[0] ?? []), levels[0]?.[0]].map(cellOf);
  return (
    !cells.every(isBlank) && cells.every((cell) => isBlank(cell) || (typeof cell === 'string' && isHeadingText(cell)))
  );
}
