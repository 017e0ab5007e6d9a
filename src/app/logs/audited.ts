import type { Card, CardEntry, Finding, Treatment } from '../../engine/index.js';
import type { FoundLog } from './found.js';

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

/** What is asked of the logs of a book. */
export interface AuditTerms {
  /** Only the logs of this sheet. */
  readonly sheet?: string;
  /** Where the card stands: `Card!A1:B12`, `A1:B12` on the log's sheet, a defined name, a table's name. */
  readonly card?: string;
  /** Later rows are left out. [serial day] */
  readonly asOf?: number;
  /** Only this system. */
  readonly system?: string;
}
