import { systemKey } from '../../engine/index.js';
import { FileProblem } from '../../sheet/index.js';
import { cardsAbove } from './cardsAbove.js';
import type { FoundCard, FoundLog } from './found.js';
import { rangeText } from './rangeText.js';

interface CardChoice {
  readonly log: FoundLog;
  /** All logs of the book: a card beside another log is that one's. */
  readonly logs: readonly FoundLog[];
  readonly cards: readonly FoundCard[];
  /** The system that is audited; null: neither the log nor anybody names one. */
  readonly system: string | null;
  /** Somebody said that the card is one of these. */
  readonly areAsked: boolean;
}

/** The card of a system in a log: the one with its name, else the one on the sheet, else the only one that fits. */
export function cardFor(choice: CardChoice): FoundCard {
  const originals = choice.cards.filter(({ isCopy }) => !isCopy);
  for (const fitting of [...choicesOf({ ...choice, cards: originals }), ...choicesOf(choice)]) {
    const [card, ...others] = fitting;
    if (card === undefined) continue;
    if (others.length === 0) return card;
    const [above, ...further] = cardsAbove(choice.log, choice.logs, fitting);
    if (above !== undefined && further.length === 0) return above;
    throw new FileProblem(several(choice, fitting));
  }
  throw new FileProblem(missing(choice));
}

/** From the best reason to the weakest; the first that any card meets decides. */
function choicesOf({ log, logs, cards, system, areAsked }: CardChoice): FoundCard[][] {
  const here = (card: FoundCard): boolean => card.sheet === log.sheet;
  const named = (name: string): FoundCard[] => cards.filter((card) => isSystem(card, name));
  const isLone = log.systems.length < 2;
  const nameless = cards.filter((card) => card.system === null && isLone);
  const fitting = system === null ? cards : nameless;
  const isElsewhere = (card: FoundCard): boolean => logs.every(({ sheet }) => sheet !== card.sheet);
  // With several logs, a card that names a system is of that system alone.
  const loose = fitting.filter((card) => isElsewhere(card) && (card.system === null || logs.length === 1));
  return [
    ...(system === null ? [] : [named(system).filter(here), named(system)]),
    ...(areAsked && cards.length === 1 ? [cards.filter((card) => isLone || card.system === null)] : []),
    fitting.filter((card) => here(card) && card.names === null),
    ...(system === null ? [fitting.filter(here), named(log.sheet)] : []),
    fitting.filter((card) => card.names === null && sheetStem(card.sheet) === sheetStem(log.sheet)),
    loose,
  ];
}

function isSystem(card: FoundCard, name: string): boolean {
  return card.system !== null && systemKey(card.system) === systemKey(name);
}

function place({ log, system }: CardChoice): string {
  return `Sheet "${log.sheet}"${log.systems.length > 1 && system !== null ? `, system "${system}"` : ''}`;
}

function several(choice: CardChoice, cards: readonly FoundCard[]): string {
  const [first, second] = cards.map(({ sheet, range }) => rangeText(sheet, range));
  const more = cards.length > 2 ? ` and ${cards.length - 2} more` : '';
  return (
    `${place(choice)}: several cards could be its card: ${first ?? ''} and ${second ?? ''}${more}; ` +
    `give the range of the right one, such as ${first ?? ''}, or write the system into the log and the cards`
  );
}

function missing(choice: CardChoice): string {
  const sheets = new Set(choice.logs.map(({ sheet }) => sheet));
  const orSheet =
    sheets.size > 1 ? '; if this is not the log of a treatment, ask for the sheet of the real log only' : '';
  const table = choice.cards.find(({ names }) => names !== null);
  const isShared = table === undefined && choice.log.systems.length > 1;
  const least = isShared ? '"System", "Volume" and "Form"' : '"Volume" and "Form"';
  const where =
    table === undefined
      ? 'beside the log or on a sheet of its own'
      : `or a row of the table of cards on sheet "${table.sheet}" with the system's name`;
  return (
    `${place(choice)}: no card was found; write one (two columns, names and values, with at least ${least}) ` +
    `${where}, or give its range, such as Card!A1:B12${orSheet}`
  );
}

/** What a sheet is about, without the words for what is on it: "Past log" and "Past card" are both about "past". */
function sheetStem(name: string): string {
  return name
    .toLowerCase()
    .replace(/\b(?:logs?|cards?|sheets?|tests?|readings?|data)\b/g, ' ')
    .replace(/[\s_-]+/g, ' ')
    .trim();
}
