import type { Card, CardEntry, Finding, LoggedTreatment } from '../../engine/index.js';
import type { FoundLog } from './foundLog.js';

/** One system of one log, audited. */
export interface Audited {
  readonly log: FoundLog;
  /** As the log, else the card, names it; null: neither does. */
  readonly system: string | null;
  readonly card: Card;
  /** Where the card stands, such as `Card!A1:B12`. */
  readonly cardFrom: string;
  /** The rows of the card as written, and what each is read as. */
  readonly cardEntries: readonly CardEntry[];
  readonly treatment: LoggedTreatment;
  /** Rows in them are those of the log's range; `sheetRow` and `findingsInSheet` give those of the sheet. */
  readonly findings: readonly Finding[];
}
