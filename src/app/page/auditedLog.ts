import type { Audited } from '../logs/audited.js';
import { auditLog } from '../logs/auditLog.js';
import type { FoundLog } from '../logs/found.js';
import { FileProblem } from '../../sheet/index.js';
import type { Found } from './foundIn.js';

interface PanelChoice {
  readonly system: string | undefined;
  /** Where the card stands; undefined or '': as found. */
  readonly card: string | undefined;
}

/** One log audited, or the sentence that says what keeps it from being audited. */
export function auditedLog(
  { book, logs, cards }: Found,
  log: FoundLog,
  { system, card }: PanelChoice,
): Audited | string {
  try {
    const asked = {
      ...(system === undefined ? {} : { system }),
      ...(card === undefined || card === '' ? {} : { card }),
    };
    const [audited] = auditLog({ book, log, logs, cards, asked });
    return audited ?? 'This log has no card: two columns, names and values, such as Volume, Form, Strength and Days.';
  } catch (fault) {
    if (fault instanceof FileProblem) return fault.message.endsWith('.') ? fault.message : `${fault.message}.`;
    throw fault;
  }
}
