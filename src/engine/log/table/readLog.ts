import type { Problem } from '../../result/problem.js';
import { ok, refuse, type Result } from '../../result/result.js';
import { isBlank } from '../../units/cell.js';
import type { ColumnKind } from '../headings/columnKinds.js';
import { headingsOf, type HeadingRead } from '../headings/readHeadings.js';
import type { Gallon } from './columnNumbers.js';
import { copperColumn } from './copperColumn.js';
import { keptRows } from './keptRows.js';
import { type Log, type NumberKind, type RowFault, numbersOf, textsOf } from './log.js';
import { headingRowOf, headingsIn, type LogRange } from './logRange.js';
import { changeColumns, numberColumn, replacementColumns } from './numberColumns.js';
import { TimeReader } from './rowTimes.js';
import { textColumn } from './textColumn.js';
import { zerosAsBlanks } from './zerosAsBlanks.js';
import { timedRows } from './timedRows.js';

interface LogReading {
  readonly log: LogRange;
  readonly gallon: Gallon;
  /** Columns without which the question cannot be answered. */
  readonly needs: readonly ColumnKind[];
}

/** Reads a log with its headings in people's own words. What cannot be read in a row is a fault; the rest is read. */
export function readLog({ log, gallon, needs }: LogReading): Result<Log, Problem> {
  const headingRow = headingRowOf(log);
  const headings = headingsIn(log, headingRow);
  if (!headings.ok) return headings;
  const missing = needs.find((kind) => headingsOf(headings.value, kind).length === 0);
  if (missing !== undefined) return refuse({ code: 'missing-heading', kind: missing });
  return ok(
    columnsOf({ log: zerosAsBlanks(log, headingRow, headings.value), gallon, headings: headings.value, headingRow }),
  );
}

interface HeadedLog {
  readonly log: LogRange;
  readonly gallon: Gallon;
  readonly headings: readonly HeadingRead[];
  readonly headingRow: number;
}

function columnsOf({ log, gallon, headings, headingRow }: HeadedLog): Log {
  const [date, timeOfDay] = headingsOf(headings, 'time').map(({ column }) => column);
  const times = new TimeReader({ date: date ?? 0, timeOfDay: timeOfDay ?? null }, log.cellOf);
  const kept = keptRows(log, headingRow, date ?? 0);
  const timed = timedRows(log, kept, times);
  const faults: RowFault[] = [...timed.faults];
  const only = (kind: ColumnKind): HeadingRead | null => headingsOf(headings, kind)[0] ?? null;
  const at = { log, gallon, rows: timed, faults };
  const copper = copperColumn(at, only('copper'));
  // In this order: of two faults in one row, the one found first comes first.
  const changes = changeColumns(at, only('change'));
  const dose = numberColumn(at, 'dose', only('dose'));
  const replacements = replacementColumns(at, only('replacement'));
  const read = { dose, change: changes.litres, replacement: replacements.level };
  const number = (kind: NumberKind): Float64Array | null =>
    kind === 'dose' || kind === 'change' || kind === 'replacement' ? read[kind] : numberColumn(at, kind, only(kind));
  return {
    headings,
    unread: headings.filter(({ words, column }) => words === null && saysSomething(log, kept, column)),
    count: timed.count,
    row: timed.row,
    when: timed.when,
    dateOnly: timed.dateOnly,
    copper: copper.copper,
    low: copper.low,
    odd: copper.odd,
    zeroRows: copper.zeroRows,
    hasBlanks: copper.hasBlanks,
    numbers: numbersOf(number),
    changeShare: changes.share,
    replacementMatched: replacements.matched,
    texts: textsOf((kind) => textColumn(at, headingsOf(headings, kind))),
    faults: faults.sort((a, b) => a.row - b.row),
  };
}

function saysSomething({ range, cellOf }: LogRange, kept: Uint32Array, column: number): boolean {
  return kept.some((row) => !isBlank(cellOf(range[row]?.[column])));
}
