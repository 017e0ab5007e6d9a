import type { HoldTerms } from '../hold/holdTerms.js';
import { traceHolds } from '../hold/traceHolds.js';
import { doubtfulZeros } from '../hold/doubtfulZeros.js';
import { readingsWithout } from '../hold/readingsWithout.js';
import type { ReadingColumns } from '../log/readingColumns.js';
import type { RowFault } from '../log/table/log.js';
import { holdAnswer, type HoldAnswer } from './holdAnswer.js';
import { readingsWithCells } from './readingsWithCells.js';
import type { Treatment } from './treatment.js';

/** Copper cells inside a hold that say nothing certain, and what becomes of the hold either way. */
export interface OpenHold {
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

/** So many cells are tried one by one for the row to name; past that the first is named. */
const triedOneByOne = 20;

/** What the unreadable cells and the bare zeros inside a hold leave open; null: there are none. */
export function openHold({ log, readings, terms, card }: Treatment): OpenHold | null {
  const faults = log.faults.filter(({ kind, when }) => kind === 'copper' && !Number.isNaN(when));
  const zeros = doubtfulZeros(readings, terms.low);
  if (faults.length === 0 && zeros.length === 0) return null;
  const tested = readingsWithout(readings, zeros);
  const unreadable = faultsInHold(tested, faults, terms);
  if (unreadable.length === 0 && zeros.length === 0) return null;
  const isBelow = (row: number, below: readonly number[]): boolean => below.includes(row);
  const answer = (below: readonly number[] | 'all'): HoldAnswer => {
    const kept =
      below === 'all'
        ? readings
        : readingsWithout(
            readings,
            zeros.filter((row) => !isBelow(row, below)),
          );
    const cells = unreadable.map((fault) => ({
      ...fault,
      level: below === 'all' || isBelow(fault.row, below) ? 0 : terms.low,
    }));
    return holdAnswer(traceHolds(readingsWithCells(kept, cells), terms), terms, card.days);
  };
  const ifBelow = answer('all');
  const ifHeld = answer([]);
  const rows = [...unreadable.map(({ row }) => row), ...zeros].sort((a, b) => a - b);
  const deciding = differ(ifBelow, ifHeld)
    ? (rows.slice(0, triedOneByOne).find((row) => differ(answer([row]), ifHeld)) ?? rows[0] ?? null)
    : null;
  return { unreadable, zeros, ifBelow, ifHeld, row: deciding };
}

/** Once complete, more days or fewer make no other answer. */
function differ(a: HoldAnswer, b: HoldAnswer): boolean {
  return a.kind !== b.kind || (a.kind !== 'complete' && a.days !== b.days);
}

/** Faults between a hold's first reading and its end, each counted as inside the band. */
function faultsInHold(tested: ReadingColumns, faults: readonly RowFault[], terms: HoldTerms): readonly RowFault[] {
  const columns = readingsWithCells(
    tested,
    faults.map((fault) => ({ ...fault, level: terms.low })),
  );
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
