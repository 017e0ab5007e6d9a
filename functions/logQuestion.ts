import {
  cardOf,
  logOfOneSystem,
  ok,
  readLog,
  refuse,
  timeIn,
  treatmentOf,
  unlessBlankOrZero,
  type ColumnKind,
  type Log,
  type Treatment,
  type LogRange,
  type Problem,
  type Result,
  type SystemCard,
} from '../src/engine/index.js';
import { cellOf } from './cellOf.js';
import { rangeOf } from './rangeOf.js';

export function logRangeOf(log: unknown): LogRange {
  return { range: rangeOf(log), firstRow: 1, cellOf };
}

interface LogArguments {
  readonly log: unknown;
  readonly card: unknown;
  readonly asOf?: unknown;
  /** The moment must be given. */
  readonly needsMoment?: boolean;
  /** A row that cannot be read ends the answer, as no row is left out in silence. */
  readonly strict?: boolean;
  readonly needs?: readonly ColumnKind[];
}

/** Reads a card and the log of its one system, up to a moment. */
export function logQuestion({
  log,
  card,
  asOf,
  needsMoment = false,
  strict = false,
  needs = ['time', 'copper'],
}: LogArguments): Result<Treatment, Problem> {
  const moment = cellOf(asOf);
  const now = needsMoment ? timeIn(moment)('as of') : unlessBlankOrZero(moment, timeIn, undefined)('as of');
  if (!now.ok) return now;
  const read = cardOf({ range: rangeOf(card), cellOf });
  if (!read.ok) return read;
  const rows = logOfOneSystem(logRangeOf(log), read.value.card, needs);
  if (!rows.ok) return rows;
  const treatment = treatmentOf(rows.value, read.value.card, now.value);
  const [fault] = treatment.log.faults;
  return strict && fault !== undefined ? refuse(fault.problem) : ok(treatment);
}

/** The log of several systems. */
export function readSharedLog(log: unknown, cards: readonly SystemCard[]): Result<Log, Problem> {
  const gallon = cards[0]?.card.gallon ?? 'US';
  const other = cards.find(({ card }) => card.gallon !== gallon);
  if (other !== undefined) {
    return refuse({ code: 'card-twice', name: 'gallon', first: gallon, second: other.card.gallon });
  }
  return readLog({ log: logRangeOf(log), gallon, needs: ['time', 'copper', 'system'] });
}
