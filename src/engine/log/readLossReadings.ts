import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { isBlank, type Cell } from '../units/cell.js';
import { parseQuantity } from '../units/parseQuantity.js';
import { serialDay } from '../units/quantity.js';
import { shown } from '../units/shown.js';
import { lossFault, type LossReading } from '../water/lossFault.js';
import { isHeadingText, parallelRanges, type RawRange } from './parallelRanges.js';
import { highestLevel } from '../units/readers/quantityReaders.js';
import { readReadings, type ReadingRanges } from './readReadings.js';
import { rowTime } from './rowTime.js';

interface LossRanges extends ReadingRanges {
  /** undefined or a single blank cell: nothing was added. */
  readonly rise?: RawRange | undefined;
}

/**
 * The readings of two parallel ranges, each with what a third says was added since the reading before. A rise in a row
 * without a test goes to the next reading: the copper is in the water either way.
 *
 * Definition: see the conventions of the cell functions for readings, times and ranges; a blank rise is 0.
 */
export function readLossReadings({ when, copper, rise, cellOf }: LossRanges): Result<LossReading[], Problem> {
  const others = [{ name: 'copper', range: copper }];
  if (rise !== undefined && !isOmitted(rise, cellOf)) others.push({ name: 'rise', range: rise });
  const columns = parallelRanges({ name: 'when', range: when }, ...others);
  if (!columns.ok) return columns;
  const [times = [], levels = [], rises] = columns.value;
  return readUpTo(levels.length, { when: times, copper: levels, rise: rises, cellOf });
}

function isOmitted(rise: RawRange, cellOf: ReadingRanges['cellOf']): boolean {
  return rise.length === 1 && rise[0]?.length === 1 && isBlank(cellOf(rise[0][0]));
}

/** The first so many rows. Of several faults the lowest row's counts, so the rows before a fault are searched for one. */
function readUpTo(rows: number, ranges: LossRanges): Result<LossReading[], Problem> {
  const { cellOf } = ranges;
  const first = (range: RawRange): RawRange => range.slice(0, rows);
  const when = first(ranges.when);
  const copper = first(ranges.copper);
  const rise = ranges.rise === undefined ? undefined : first(ranges.rise);
  const readings = rows === 0 ? ok([]) : withRises({ when, copper, rise, cellOf });
  const row = readings.ok ? null : rowOf(readings.problem);
  if (readings.ok || row === null) return readings;
  const before = readUpTo(row - 1, ranges);
  const fault = before.ok ? lossFault(before.value) : before.problem;
  return fault === null ? readings : refuse(fault);
}

function rowOf(problem: Problem): number | null {
  if ('row' in problem) return problem.row;
  return 'at' in problem && 'row' in problem.at ? problem.at.row : null;
}

function withRises({ when, copper, rise, cellOf }: LossRanges): Result<LossReading[], Problem> {
  const columns = readReadings({ when, copper, cellOf });
  if (!columns.ok) return columns;
  const { count, odd } = columns.value;
  const readings = Array.from({ length: count }, (_, index): LossReading => {
    const [low = NaN, row = NaN] = [columns.value.low[index], columns.value.row[index]];
    return { when: serialDay(columns.value.when[index] ?? NaN), low, high: odd.get(row)?.high ?? low, rise: 0, row };
  });
  if (rise === undefined) return ok(readings);
  const added = readRises({ when, rise, cellOf });
  return added.ok ? ok(handedOn(readings, added.value)) : added;
}

/** Copper that a row says was added. */
interface Addition {
  readonly when: number;
  readonly row: number;
  readonly rise: number;
}

function readRises({
  when,
  rise,
  cellOf,
}: Omit<LossRanges, 'copper'> & { rise: RawRange }): Result<Addition[], Problem> {
  const additions: Addition[] = [];
  for (let index = 0; index < rise.length; index++) {
    const raw = rise[index]?.[0];
    // Whole columns are mostly empty.
    if (raw === null || raw === '') continue;
    const [date, timeOfDay] = when[index] ?? [];
    const row = index + 1;
    const cell = cellOf(raw);
    if (isNothing(cell) || (index === 0 && isHeading(cell, cellOf(date)))) continue;
    const level = riseIn(cell, row);
    if (!level.ok) return level;
    if (level.value === 0) continue;
    const cells = { date: cellOf(date), timeOfDay: when[index]?.length === 2 ? cellOf(timeOfDay) : undefined };
    const time = rowTime(cells, row);
    if (!time.ok) return time;
    if (time.value === null) return refuse({ code: 'rise-without-time', row, given: shown(cell) });
    additions.push({ when: time.value, row, rise: level.value });
  }
  return ok(additions.sort((a, b) => a.when - b.when || a.row - b.row));
}

function isNothing(cell: Cell): boolean {
  return cell === 0 || isBlank(cell) || (typeof cell === 'string' && /^(?:none|-)$/i.test(cell.trim()));
}

function isHeading(cell: Cell, date: Cell): boolean {
  return typeof cell === 'string' && typeof date === 'string' && isHeadingText(date);
}

function riseIn(cell: Cell, row: number): Result<number, Problem> {
  const at = { row };
  const level = parseQuantity(cell, 'level', at);
  if (!level.ok || (level.value >= 0 && level.value <= highestLevel)) return level;
  return refuse({ code: 'out-of-limits', at, given: shown(cell), limits: { min: 0, max: highestLevel }, unit: 'mg/L' });
}

/** Each addition goes to its own row's reading or to the next one; both lists stand in the order of time, then row. */
function handedOn(readings: readonly LossReading[], additions: readonly Addition[]): LossReading[] {
  let next = 0;
  return readings.map((reading) => {
    let rise = 0;
    for (; next < additions.length; next++) {
      const addition = additions[next];
      if (addition === undefined || isAfter(addition, reading)) break;
      rise += addition.rise;
    }
    return { ...reading, rise };
  });
}

function isAfter(addition: Addition, reading: LossReading): boolean {
  return addition.when > reading.when || (addition.when === reading.when && addition.row > reading.row);
}
