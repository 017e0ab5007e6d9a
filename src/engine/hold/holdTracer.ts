import type { Level } from '../log/reading.js';
import type { ReadingSink, ReadingColumns } from '../log/readingColumns.js';
import { instantDays, levelTolerance, secondDays } from '../units/quantity.js';
import type { HoldTerms } from './holdTerms.js';
import type { Hold, HoldEnd, HoldTrace, LastTest } from './holdTrace.js';

/** Traces holds through readings that come one after another, so that a million rows need no columns of their own. */
export class HoldTracer implements ReadingSink {
  /** Whether every reading came at or after the one before; a trace of others is worth nothing. */
  inOrder = true;
  private readonly threshold: number;
  private readonly longestGap: number;
  private readonly asOf: number;
  private readonly holds: Hold[] = [];
  private count = 0;
  /** The instant being gathered: its time, its first reading and its lowest. */
  private instant = -Infinity;
  private firstOfInstant = 0;
  private lowest = 0;
  private lowestIndex = -1;
  private lowestRow = 0;
  private firstRow = 0;
  private latest = -Infinity;
  /** The instant before it, and the hold that runs. */
  private previous = -Infinity;
  private inARow = 0;
  private firstIndex = -1;
  private lastIndex = -1;
  private from = 0;
  private to = 0;

  constructor(private readonly terms: HoldTerms) {
    this.threshold = terms.low - levelTolerance;
    this.longestGap = terms.longestGap + secondDays;
    this.asOf = (terms.asOf ?? Infinity) + instantDays;
  }

  add(when: number, level: number, row: number): void {
    if (when < this.latest) this.inOrder = false;
    this.latest = when;
    if (when >= this.asOf) return;
    if (when - this.instant < instantDays) {
      if (level < this.lowest) this.setLowest(level, row);
    } else {
      this.settle();
      this.instant = when;
      this.firstOfInstant = this.count;
      this.firstRow = row;
      this.setLowest(level, row);
    }
    this.count++;
  }

  /** @param odd what the readings are beyond a bare level, by row */
  trace(odd: ReadonlyMap<number, Level>): HoldTrace {
    this.settle();
    const { count, instant, lowest, lowestRow } = this;
    const running = this.firstIndex < 0 ? null : this.hold({ kind: 'running' });
    const under = odd.get(lowestRow)?.under ?? null;
    const last: LastTest | null = count === 0 ? null : { when: instant, level: lowest, under, row: lowestRow };
    return { holds: running === null ? this.holds : [...this.holds, running], running, last, count };
  }

  private setLowest(level: number, row: number): void {
    this.lowest = level;
    this.lowestIndex = this.count;
    this.lowestRow = row;
  }

  /** All readings of an instant are known: it breaks a hold, starts one, or goes on with it. */
  private settle(): void {
    if (this.count === 0) return;
    if (this.lowest < this.threshold) this.close({ kind: 'below', index: this.lowestIndex, row: this.lowestRow });
    else {
      const gap = this.instant - this.previous;
      if (gap > this.longestGap && this.previous !== -Infinity) {
        this.close({ kind: 'untested', index: this.firstOfInstant, row: this.firstRow, days: gap });
      }
      this.inARow++;
      if (this.firstIndex < 0 && this.inARow >= this.terms.confirm) {
        this.firstIndex = this.firstOfInstant;
        this.from = this.instant;
      }
      this.lastIndex = this.count - 1;
      this.to = this.instant;
    }
    this.previous = this.instant;
  }

  private close(endedBy: HoldEnd): void {
    if (this.firstIndex >= 0) this.holds.push(this.hold(endedBy));
    this.firstIndex = -1;
    this.inARow = 0;
  }

  private hold(endedBy: HoldEnd): Hold {
    const { firstIndex, lastIndex, from, to } = this;
    return { firstIndex, lastIndex, from, to, endedBy };
  }
}

/**
 * The holds in a series of readings.
 *
 * Definition: a hold starts at the first reading at or above the low limit (with confirm 2 at the second of two in a
 * row, at different instants) and runs until a reading below. A stretch between tests longer than the longest gap
 * restarts it at the later reading. Readings less than half a second apart are one instant, and its lowest counts.
 *
 * @param columns readings in time order
 * @param terms what counts as a hold
 * @returns every hold in time order
 */
export function traceHolds(columns: ReadingColumns, terms: HoldTerms): HoldTrace {
  const { when, low, row, count } = columns;
  const tracer = new HoldTracer(terms);
  for (let index = 0; index < count; index++) tracer.add(when[index] ?? 0, low[index] ?? 0, row[index] ?? 0);
  return tracer.trace(columns.odd);
}
