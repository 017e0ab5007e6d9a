import type { Audited } from '../logs/audited.js';
import { auditLog } from '../logs/auditLog.js';
import { cardsIn } from '../logs/cardsIn.js';
import type { FoundCard, FoundLog } from '../logs/found.js';
import { logsIn } from '../logs/logsIn.js';
import { type Book, FileProblem } from '../../sheet/index.js';

/** The logs and cards of a book. */
export interface Found {
  readonly book: Book;
  readonly logs: readonly FoundLog[];
  readonly cards: readonly FoundCard[];
}

export function foundIn(book: Book): Found {
  const cards = cardsIn(book);
  return { book, logs: logsIn(book, undefined, cards), cards };
}

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
    return (
      audited ??
      'This log has no card. A card has two columns, names and values, such as Volume, Form, Strength and Days.'
    );
  } catch (fault) {
    if (fault instanceof FileProblem) return fault.message.endsWith('.') ? fault.message : `${fault.message}.`;
    throw fault;
  }
}
