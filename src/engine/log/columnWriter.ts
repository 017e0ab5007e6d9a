import { timeOrder } from './timeOrder.js';
import type { ReadingColumns, ReadingSink } from './readingColumns.js';

/** Fills reading columns in row order and hands them over in time order. */
export class ColumnWriter implements ReadingSink {
  private count = 0;
  private sorted = true;
  private latest = -Infinity;
  private readonly when: Float64Array;
  private readonly low: Float64Array;
  private readonly row: Uint32Array;

  constructor(rows: number) {
    this.when = new Float64Array(rows);
    this.low = new Float64Array(rows);
    this.row = new Uint32Array(rows);
  }

  add(when: number, low: number, row: number): void {
    const at = this.count++;
    this.when[at] = when;
    this.low[at] = low;
    this.row[at] = row;
    if (when < this.latest) this.sorted = false;
    else this.latest = when;
  }

  columns(): Pick<ReadingColumns, 'count' | 'when' | 'low' | 'row'> {
    const { count, when, low, row } = this;
    return { count, ...(this.sorted ? { when, low, row } : this.inTimeOrder()) };
  }

  private inTimeOrder(): Pick<ReadingColumns, 'when' | 'low' | 'row'> {
    const order = timeOrder(this.when, this.count);
    return {
      when: inOrder(this.when, new Float64Array(this.count), order),
      low: inOrder(this.low, new Float64Array(this.count), order),
      row: inOrder(this.row, new Uint32Array(this.count), order),
    };
  }
}

function inOrder<A extends Float64Array | Uint32Array>(from: A, to: A, order: Uint32Array): A {
  for (let at = 0; at < order.length; at++) to[at] = from[order[at] ?? 0] ?? 0;
  return to;
}
