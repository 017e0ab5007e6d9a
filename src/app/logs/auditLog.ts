import { auditFindings, type Log, systemKey, treatmentOf } from '../../engine/index.js';
import { type Book, FileProblem } from '../../sheet/index.js';
import { askedCards } from './askedCards.js';
import type { Audited, AuditTerms } from './audited.js';
import { cardFor } from './cardFor.js';
import type { FoundCard, FoundLog } from './found.js';
import { LogReader } from './logReader.js';
import { rangeText } from './rangeText.js';
import { readFoundCard } from './readFoundCard.js';

interface LogToAudit {
  readonly book: Book;
  readonly log: FoundLog;
  readonly logs: readonly FoundLog[];
  /** Those of the book. */
  readonly cards: readonly FoundCard[];
  readonly asked: AuditTerms;
}

/** The systems of one log that are asked for, each audited with its card; none where it has no such system. */
export function auditLog(to: LogToAudit): Audited[] {
  const { book, log, asked } = to;
  const cards = asked.card === undefined ? to.cards : askedCards({ book, text: asked.card, home: log.sheet });
  if (asked.card !== undefined) refuseSharedCard(to, cards);
  const reader = new LogReader(book, log);
  const systems = systemsOf(to, cards);
  if (asked.system === undefined && systems.length > 1) reader.refuseNamelessRows();
  const carded = systems.map((system) => ({
    system,
    found: cardFor({ ...to, cards, system, areAsked: asked.card !== undefined }),
  }));
  // In the order of the cards, as people list their systems.
  carded.sort((one, other) => cards.indexOf(one.found) - cards.indexOf(other.found));
  return carded.map(({ system, found }) => {
    const { card, entries } = readFoundCard(book, found);
    const rows = reader.read(card.gallon, system);
    refuseYearless(log, rows);
    const treatment = treatmentOf(rows, card, asked.asOf);
    const cardFrom = rangeText(found.sheet, found.range);
    const name = log.systems.length > 0 ? system : (found.system ?? system);
    return { log, system: name, card, cardFrom, cardEntries: entries, treatment, findings: auditFindings(treatment) };
  });
}

/** [serial day] 1950-01-01: nobody kept such a log before. */
const firstLog = 18_264;

/** "13.3" for the 13th of March is a number, and as a time a day of January 1900. */
function refuseYearless(log: FoundLog, { when, row, count }: Log): void {
  const last = when[count - 1];
  if (last === undefined || last >= firstLog) return;
  throw new FileProblem(
    `Sheet "${log.sheet}", row ${row[0] ?? ''}: its time would be before 1950, and so would all others; ` +
      `write dates with day, month and year, like 2026-03-01`,
  );
}

/** A card that names no system is for one tank, and a sheet with two logs is about two. */
function refuseSharedCard({ log, logs }: LogToAudit, cards: readonly FoundCard[]): void {
  const [card, ...others] = cards;
  const isOther = ({ sheet, range, systems }: FoundLog): boolean =>
    sheet === log.sheet && systems.length === 0 && rangeText(sheet, range) !== rangeText(sheet, log.range);
  const beside = logs.find(isOther);
  if (card?.system !== null || others.length > 0 || beside === undefined || log.systems.length > 0) return;
  const [one, two] = [log, beside].map(({ sheet, range }) => rangeText(sheet, range));
  throw new FileProblem(
    `Sheet "${log.sheet}" has two logs, ${one ?? ''} and ${two ?? ''}, and ${rangeText(card.sheet, card.range)} is the card for only one of them; ` +
      `write each log's card right above it, or give each log a sheet of its own`,
  );
}

/** null stands for the one system of a log that names none. */
function systemsOf({ log, logs, asked }: LogToAudit, cards: readonly FoundCard[]): (string | null)[] {
  const wanted = asked.system ?? systemOfLoneCard(log, cards, asked);
  const isWanted = (name: string): boolean => wanted === undefined || systemKey(name) === systemKey(wanted);
  if (log.systems.length > 0) return log.systems.filter(isWanted);
  if (wanted === undefined) return [null];
  // A log that names no system is the one asked for where it is the only one, or its sheet or its card has the name.
  const isOnSheet = (card: FoundCard): boolean =>
    card.sheet === log.sheet && card.system !== null && isWanted(card.system);
  return logs.length === 1 || isWanted(log.sheet) || cards.some(isOnSheet) ? [wanted] : [];
}

/** Somebody named one card for a log of several systems: it is for one of them. */
function systemOfLoneCard(log: FoundLog, cards: readonly FoundCard[], asked: AuditTerms): string | undefined {
  const [card] = cards;
  if (asked.card === undefined || card?.names !== null || log.systems.length < 2) return undefined;
  if (card.system !== null) return card.system;
  throw new FileProblem(
    `Sheet "${log.sheet}": its log has ${log.systems.length} systems and ${rangeText(card.sheet, card.range)} is the card for only one of them; ` +
      `say which system, or name the range of a table of cards with a row for each`,
  );
}
