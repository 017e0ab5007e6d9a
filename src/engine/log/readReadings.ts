import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { isBlank, type Cell } from '../units/cell.js';
import { serialEnd } from '../units/time/parseTime.js';
import { plainIsoSerial } from '../../base/plainIsoSerial.js';
import { ColumnWriter } from './columnWriter.js';
import { isHeadingText, parallelRanges, type RawRange } from './parallelRanges.js';
import { plainLevel } from './plainLevel.js';
import { highestLevel } from '../units/readers/quantityReaders.js';
import type { ReadingColumns, ReadingSink } from './readingColumns.js';
import { RowReader } from './rowReader.js';

export interface ReadingRanges {
  readonly when: RawRange;
  readonly copper: RawRange;
  /** Turns what the host puts into a cell into a plain cell; numbers and texts never need it. */
  readonly cellOf: (raw: unknown) => Cell;
}

/** What the times and levels alone do not say. */
type ReadingMarks = Pick<ReadingColumns, 'odd' | 'zeroRows' | 'hasBlanks'>;

/**
 * The readings in two ranges of the same rows, in time order. Blank rows and a first row of headings are left out; every
 * other row is a reading, a time without a test, or the refusal of the whole, which names the row.
 *
 * Definition: see the conventions of the cell functions for readings, times, ranges, and blank or zero.
 */
export function readReadings(ranges: ReadingRanges): Result<ReadingColumns, Problem> {
  const writer = new ColumnWriter(Math.max(ranges.copper.length, ranges.copper[0]?.length ?? 0));
  const marks = readingsInto(writer, ranges);
  return marks.ok ? ok({ ...writer.columns(), ...marks.value }) : marks;
}

/** Hands each reading of the ranges to a sink, in row order. */
export function readingsInto(
  sink: ReadingSink,
  { when, copper, cellOf }: ReadingRanges,
): Result<ReadingMarks, Problem> {
  const ranges = parallelRanges({ name: 'when', range: when }, { name: 'copper', range: copper });
  if (!ranges.ok) return ranges;
  const [times = [], levels = []] = ranges.value;
  const rows = new RowReader(sink, cellOf);
  const twoColumns = times[0]?.length === 2;
  const first = isHeadingRow(times, levels, cellOf) ? 1 : 0;
  for (let index = first; index < levels.length; index++) {
    const date = times[index]?.[0];
    const reading = levels[index]?.[0];
    const bothNumbers = !twoColumns && typeof date === 'number' && typeof reading === 'number';
    const serial = bothNumbers ? date : twoColumns ? plainPair(date, times[index]?.[1]) : plainTime(date);
    const level = bothNumbers ? reading : plainReading(reading);
    if (serial >= 1 && serial < serialEnd && level > 0 && level <= highestLevel) {
      sink.add(serial, level, index + 1);
      continue;
    }
    const problem = rows.read({
      date,
      timeOfDay: twoColumns ? (times[index]?.[1] ?? null) : undefined,
      reading,
      row: index + 1,
    });
    if (problem !== null) return refuse(problem);
  }
  return ok(rows.marks);
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

function isHeadingRow(times: RawRange, levels: RawRange, cellOf: (raw: unknown) => Cell): boolean {
  const cells = [...(times[0] ?? []), levels[0]?.[0]].map(cellOf);
  return (
    !cells.every(isBlank) && cells.every((cell) => isBlank(cell) || (typeof cell === 'string' && isHeadingText(cell)))
  );
}
