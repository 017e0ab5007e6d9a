import type { Gallon } from './columnNumbers.js';
import type { RowFault } from './log.js';
import type { LogRange } from './logRange.js';
import type { TimedRows } from './timedRows.js';

/** What every column is read with. */
export interface ReadRows {
  readonly log: LogRange;
  readonly gallon: Gallon;
  readonly rows: TimedRows;
  /** Faults are added as they are found. */
  readonly faults: RowFault[];
}
