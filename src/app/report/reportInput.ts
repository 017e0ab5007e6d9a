import type { Audited } from '../logs/audited.js';

export interface ReportInput {
  readonly audited: Audited;
  /** The name of the file. */
  readonly file: string;
  /** null: for the log's last row. [serial day] */
  readonly asOf: number | null;
  /** When the report is made, by the clock on the wall. [serial day] */
  readonly made: number;
  /** Makes the elements of the plot; without one the report brings its own. */
  readonly document?: Document;
}
