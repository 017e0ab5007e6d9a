import type { HoldTerms } from '../hold/holdTerms.js';
import { traceHolds } from '../hold/holdTracer.js';
import { doubtfulZeros, readingsWithout } from '../hold/zeroOrUntested.js';
import type { ReadingColumns } from '../log/readingColumns.js';
import type { RowFault } from '../log/table/log.js';
import { holdAnswer, type HoldAnswer } from './holdAnswer.js';
import type { Treatment } from './treatment.js';

/** Copper cells inside a hold that say nothing certain, and what becomes of the hold either way. */
interface OpenHold {
  /** Unreadable cells inside a hold, by row. */
  readonly unreadable: readonly RowFault[];
  /** Bare zeros that may be empty cells, by row. */
  readonly zeros: readonly number[];
  /** Every one counted as below the band. */
  readonly ifBelow: HoldAnswer;
  /** Every unreadable one counted as inside the band, every zero as no test. */
  readonly ifHeld: HoldAnswer;
  /** The lowest row on which the answer hangs; null: it is the same either way. */
  readonly row: number | null;
}

/** Cells are tried one by one for the row to name, over so many readings in all; past that the first is named. */
const readingsTried = 100_000;
const mostTries = 20;

const known = new WeakMap<Treatment, OpenHold | null>();

/** What the unreadable cells and the bare zeros inside a hold leave open; null: there are none. */
export function openHold(treatment: Treatment): OpenHold | null {
  const before = known.get(treatment);
  if (before !== undefined) return before;
  const open = leftOpen(treatment);
  known.set(treatment, open);
  return open;
}

function leftOpen({ log, readings, terms, card }: Treatment): OpenHold | null {
  const faults = log.faults.filter(({ kind, when }) => kind === 'copper' && !Number.isNaN(when));
  const zeros = doubtfulZeros(readings, terms.low);
  if (faults.length === 0 && zeros.length === 0) return null;
  const tested = readingsWithout(readings, zeros);
  const unreadable = faultsInHold(tested, faults, terms);
  const zeroRows = new Set(zeros);
  const cells: Omit<CountedCell, 'level'>[] = [...unreadable];
  for (let index = 0; index < readings.count && zeros.length > 0; index++) {
    const row = readings.row[index] ?? 0;
    if (zeroRows.has(row)) cells.push({ row, when: readings.when[index] ?? NaN });
  }
  if (cells.length === 0) return null;
  const held = readingsWithCells(tested, counted(unreadable, terms.low));
  // A cell below beside one in the band at the same instant: the lower counts.
  const answer = (below: readonly Omit<CountedCell, 'level'>[]): HoldAnswer =>
    holdAnswer(traceHolds(readingsWithCells(held, counted(below, 0)), terms), terms, card.days);
  const ifBelow = answer(cells);
  const ifHeld = answer([]);
  if (!differ(ifBelow, ifHeld)) return { unreadable, zeros, ifBelow, ifHeld, row: null };
  cells.sort((a, b) => a.row - b.row);
  const tries = Math.min(mostTries, Math.floor(readingsTried / held.count));
  const deciding = cells.slice(0, tries).find((cell) => differ(answer([cell]), ifHeld)) ?? cells[0];
  return { unreadable, zeros, ifBelow, ifHeld, row: deciding?.row ?? null };
}

function counted(cells: readonly Omit<CountedCell, 'level'>[], level: number): CountedCell[] {
  return cells.map(({ row, when }) => ({ row, when, level }));
}

/** Once complete, more days or fewer make no other answer. */
function differ(a: HoldAnswer, b: HoldAnswer): boolean {
  return a.kind !== b.kind || (a.kind !== 'complete' && a.days !== b.days);
}

/** Faults between a hold's first reading and its end, each counted as inside the band. */
function faultsInHold(tested: ReadingColumns, faults: readonly RowFault[], terms: HoldTerms): readonly RowFault[] {
  const columns = readingsWithCells(tested, counted(faults, terms.low));
  const faultOfRow = new Map(faults.map((fault) => [fault.row, fault]));
  const inside: RowFault[] = [];
  for (const { firstIndex, lastIndex } of traceHolds(columns, terms).holds) {
    let isTested = false;
    for (let index = firstIndex; index <= lastIndex; index++) {
      const fault = faultOfRow.get(columns.row[index] ?? 0);
      if (fault === undefined) isTested = true;
      else if (isTested) inside.push(fault);
    }
  }
  return inside.sort((a, b) => a.row - b.row);
}

/** A cell that is to count as a reading. */
interface CountedCell {
  readonly row: number;
  /** [serial day] */
  readonly when: number;
  /** [mg/L] */
  readonly level: number;
}

/** The readings with some cells counted among them, in time order. */
function readingsWithCells(readings: ReadingColumns, cells: readonly CountedCell[]): ReadingColumns {
  if (cells.length === 0) return readings;
  const added = [...cells].sort((a, b) => a.when - b.when);
  const count = readings.count + added.length;
  const columns = { when: new Float64Array(count), low: new Float64Array(count), row: new Uint32Array(count) };
  let next = 0;
  let read = 0;
  for (let index = 0; index < count; index++) {
    const cell = added[next];
    const when = readings.when[read] ?? NaN;
    const isCell = cell !== undefined && (read >= readings.count || cell.when < when);
    columns.when[index] = isCell ? cell.when : when;
    columns.low[index] = isCell ? cell.level : (readings.low[read] ?? NaN);
    columns.row[index] = isCell ? cell.row : (readings.row[read] ?? 0);
    if (isCell) next++;
    else read++;
  }
  return { ...readings, ...columns, count };
}
