import type { Card, CardEntry, Finding, Treatment } from '../../engine/index.js';
import type { FoundLog } from './foundLog.js';

/** One system of one log, audited; rows are those of the sheet. */
export interface Audited {
  readonly log: FoundLog;
  /** As the log, else the card, names it; null: neither does. */
  readonly system: string | null;
  readonly card: Card;
  /** Where the card stands, such as `Card!A1:B12`. */
  readonly cardFrom: string;
  /** The rows of the card as written, and what each is read as. */
  readonly cardEntries: readonly CardEntry[];
  readonly treatment: Treatment;
  readonly findings: readonly Finding[];
}
