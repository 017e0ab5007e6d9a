import type { ReadingColumns } from '../log/readingColumns.js';
import { instantDays, levelTolerance, secondDays } from '../units/quantity.js';
import { heldDays, heldFrom } from './heldFrom.js';
import { notedGapDays, type HoldTerms } from './holdTerms.js';
import type { Hold } from './holdTrace.js';
import { traceHolds } from './holdTracer.js';

// Taken once: in some hosts every look-up of a global is slow.
const { max } = Math;

/** The band a reading is judged by. */
export interface JudgedBand {
  readonly low: number;
  /** Infinity: no top. */
  readonly high: number;
  /** The band without the allowance at either end, where its form has one. */
  readonly inner?: { readonly low: number; readonly high: number };
}

export type ReadingNote =
  | { readonly kind: 'approximate' | 'top unknown' | 'allowance' | 'hold starts' }
  | { readonly kind: 'tested after' | 'hold broken'; readonly days: number };

/** A reading and where it stands in its hold. */
export interface HoldRow {
  /** [serial day] */
  readonly when: number;
  /** The low end; of a reading under a bound, the bound. [mg/L] */
  readonly level: number;
  readonly status: 'below' | 'in band' | 'above';
  /** Days in the hold so far, null outside one and before the arrival. */
  readonly elapsed: number | null;
  readonly row: number;
  readonly notes: readonly ReadingNote[];
}

/**
 * Every reading with its status, its day in the hold, and what is to be said of it.
 *
 * Definition: the low end decides below, the high end above; elapsed days run from the hold's start or the arrival.
 *
 * @param columns readings in time order
 * @param terms what counts as a hold
 * @param band limits and, for a form with an allowance, the limits without it
 * @returns readings in time order
 */
export function holdRows(columns: ReadingColumns, terms: HoldTerms, band: JudgedBand): readonly HoldRow[] {
  const { when, low, row, odd } = columns;
  const { holds, count } = traceHolds(columns, terms);
  const breaks = new Map(holds.flatMap((hold) => (hold.endedBy.kind === 'below' ? [[hold.endedBy.index, hold]] : [])));
  const rows: HoldRow[] = [];
  let next = 0;
  let instant = NaN;
  let previous = NaN;
  let started: Hold | undefined;
  for (let index = 0; index < count; index++) {
    const at = when[index] ?? NaN;
    const firstOfInstant = !(at - instant < instantDays);
    if (firstOfInstant) {
      previous = instant;
      instant = at;
    }
    while (next < holds.length && (holds[next]?.lastIndex ?? 0) < index) next++;
    const hold = holds[next];
    const inside = hold !== undefined && index >= hold.firstIndex && at > heldFrom(hold, terms.arrived) - instantDays;
    const notes = readingNotes(columns, index, band);
    if (firstOfInstant && at - previous > notedGapDays + secondDays)
      notes.push({ kind: 'tested after', days: at - previous });
    if (inside && started !== hold) notes.push({ kind: 'hold starts' });
    if (inside) started = hold;
    const broken = breaks.get(index);
    if (broken !== undefined && broken.to > (terms.arrived ?? -Infinity) - instantDays) {
      notes.push({ kind: 'hold broken', days: heldDays(broken, terms.arrived) });
    }
    const rowNumber = row[index] ?? 0;
    rows.push({
      when: at,
      level: odd.get(rowNumber)?.under ?? low[index] ?? NaN,
      status: statusOf(columns, index, band),
      elapsed: inside ? max(0, at - heldFrom(hold, terms.arrived)) : null,
      row: rowNumber,
      notes: notes.length === 0 ? noNotes : notes,
    });
  }
  return rows;
}

/** Shared by the many readings of which nothing is to be said. */
const noNotes: readonly ReadingNote[] = [];

function statusOf({ low, row, odd }: ReadingColumns, index: number, band: JudgedBand): HoldRow['status'] {
  const lowEnd = low[index] ?? NaN;
  if (lowEnd < band.low - levelTolerance) return 'below';
  const highEnd = odd.get(row[index] ?? 0)?.high ?? lowEnd;
  return highEnd > band.high + levelTolerance ? 'above' : 'in band';
}

function readingNotes(columns: ReadingColumns, index: number, band: JudgedBand): ReadingNote[] {
  const notes: ReadingNote[] = [];
  const lowEnd = columns.low[index] ?? NaN;
  const level = columns.odd.get(columns.row[index] ?? 0);
  if (level?.approximate === true) notes.push({ kind: 'approximate' });
  if (level?.high === Infinity) notes.push({ kind: 'top unknown' });
  if (band.inner !== undefined && statusOf(columns, index, band) === 'in band') {
    const outsideInner =
      lowEnd < band.inner.low - levelTolerance || (level?.high ?? lowEnd) > band.inner.high + levelTolerance;
    if (outsideInner) notes.push({ kind: 'allowance' });
  }
  return notes;
}
