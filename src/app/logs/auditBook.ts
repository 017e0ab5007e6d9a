import { systemKey } from '../../engine/index.js';
import { type Book, FileProblem } from '../../sheet/index.js';
import { auditLog } from './auditLog.js';
import type { Audited, AuditTerms } from './audited.js';
import { cardsIn } from './cardsIn.js';
import type { FoundCard, FoundLog } from './found.js';
import { logsIn } from './logsIn.js';
import { sheetNamed } from './sheetNamed.js';

export type { Audited } from './audited.js';

/**
 * Every treatment in a book, audited: each system of each log, or those asked for, with its card. What keeps one from being
 * audited is reported with its sheet and with what to do.
 */
export function auditBook(book: Book, asked: AuditTerms = {}): Audited[] {
  const cards = cardsIn(book);
  const all = logsIn(book, undefined, cards);
  const logs = asked.sheet === undefined ? all : logsIn(book, sheetNamed(book, asked.sheet).name, cards);
  if (logs.length === 0) throw new FileProblem(noLog(asked));
  const audited = logs.flatMap((log) => auditLog({ book, log, logs: all, cards, asked }));
  if (audited.length === 0) throw new FileProblem(noSystem(asked.system ?? '', logs, cards));
  return audited;
}

function noLog({ sheet }: AuditTerms): string {
  return (
    `${sheet === undefined ? 'The file' : `Sheet "${sheet}"`} has no log; a log has a heading row with a time column and ` +
    `a copper column, such as "Date" and "Copper mg/L", and readings below it`
  );
}

function noSystem(system: string, logs: readonly FoundLog[], cards: readonly FoundCard[]): string {
  const names = [...logs.flatMap(({ systems }) => systems), ...cards.flatMap((card) => card.system ?? [])];
  const keys = names.map(systemKey);
  const known = names.filter((name, at) => keys.indexOf(systemKey(name)) === at).map((name) => `"${name}"`);
  const there = known.length === 0 ? 'the logs in the file name none' : `the file has ${known.join(', ')}`;
  return `No log has a system "${system}"; ${there}`;
}
