import {
  auditFindings,
  auditTable,
  cardOf,
  cardTable,
  deathsByLot,
  deathsTable,
  doNow,
  doNowTable,
  fishDays,
  fishDaysTable,
  headingsTable,
  levelsTable,
  notesTable,
  logHeadings,
  ok,
  readLog,
  readyGates,
  readyTable,
  stateOf,
  treatmentLevels,
} from '../src/engine/index.js';
import { refusal, tableAnswer } from './answer.js';
import { cellOf } from './cellOf.js';
import { logRangeOf, logQuestion } from './logQuestion.js';
import { rangeOf } from './rangeOf.js';

/**
 * How each heading of a log is understood, and in which unit, so that a log in your own words can be checked before it is used.
 * @customfunction HEADINGS
 * @param log The log with its heading row, such as Log[#All].
 * @returns Table with headings: Heading, Read as, Unit.
 */
export function headingsCell(log: any[][]): any[][] {
  const headings = logHeadings(logRangeOf(log));
  if (!headings.ok) return refusal(headings);
  return tableAnswer(ok(headingsTable(headings.value)));
}

/**
 * How the words of each text in a log were read: fish in and out, deaths, ammonia, medicines, signs, mishaps and the rest.
 * @customfunction NOTES
 * @param log The log with its heading row, such as Log[#All].
 * @returns Table with headings: When, Row, Text, Read as, Used for.
 */
export function notesCell(log: any[][]): any[][] {
  const read = readLog({ log: logRangeOf(log), gallon: 'US', needs: ['time'] });
  if (!read.ok) return refusal(read);
  return tableAnswer(ok(notesTable(read.value)));
}

/**
 * How each row of a card is understood: volume, form or band, strength, aim, meter, days, longest gap, fish and the rest.
 * @customfunction CARD
 * @param card Two columns, names and values.
 * @returns Table with headings: Name, Value, Unit, Read as.
 */
export function cardCell(card: any[][]): any[][] {
  const read = cardOf({ range: rangeOf(card), cellOf });
  if (!read.ok) return refusal(read);
  return tableAnswer(ok(cardTable(read.value.entries, read.value.card)));
}

/**
 * The copper level calculated from doses, water changes, evaporation and loss, with a 95 % band, in mg/L, beside each reading.
 * @customfunction LEVELS
 * @param log The log with its heading row, such as Log[#All].
 * @param card Two columns, names and values, of the one system in the log.
 * @returns Table with headings: When, Expected, Low, High, Reading, Off by.
 */
export function levelsCell(log: any[][], card: any[][]): any[][] {
  const asked = logQuestion({ log, card, strict: true });
  if (!asked.ok) return refusal(asked);
  const levels = treatmentLevels(asked.value);
  if (!levels.ok) return refusal(levels);
  return tableAnswer(ok(levelsTable(asked.value.events, levels.value)));
}

/**
 * A whole treatment recomputed from its rows: the verdict first, then dangers, warnings and notes, each with its row and source.
 * @customfunction AUDIT
 * @param log The log with its heading row, such as Log[#All].
 * @param card Two columns, names and values, of the one system in the log.
 * @param [asOf] Leave later rows out. If omitted, all rows count. Use NOW(), not TODAY().
 * @returns Table with headings: Severity, When, Row, Finding, Why, Source.
 */
export function auditCell(log: any[][], card: any[][], asOf?: any): any[][] {
  const asked = logQuestion({ log, card, asOf });
  if (!asked.ok) return refusal(asked);
  return tableAnswer(ok(auditTable(auditFindings(asked.value))));
}

/**
 * What to do at a given time, with the amount and the reason; only a test where the last one is too old. A veterinarian decides.
 * @customfunction DONOW
 * @param log The log with its heading row, such as Log[#All].
 * @param card Two columns, names and values, of the one system in the log.
 * @param asOf The moment, such as NOW().
 * @returns Table with headings: Do, Amount, Unit, By, Why.
 */
export function doNowCell(log: any[][], card: any[][], asOf: any): any[][] {
  const asked = logQuestion({ log, card, asOf, needsMoment: true });
  if (!asked.ok) return refusal(asked);
  return tableAnswer(ok(doNowTable(doNow(stateOf(asked.value)))));
}

/**
 * Which gates a treatment has met at a given time, and whether the fish may be released: release, not yet, or a vet decides.
 * @customfunction READY
 * @param log The log with its heading row, such as Log[#All].
 * @param card Two columns, names and values, of the one system in the log.
 * @param asOf The moment, such as NOW().
 * @returns Table with headings: Gate, Met, Since, Why.
 */
export function readyCell(log: any[][], card: any[][], asOf: any): any[][] {
  const asked = logQuestion({ log, card, asOf, needsMoment: true });
  if (!asked.ok) return refusal(asked);
  return tableAnswer(ok(readyTable(readyGates(asked.value))));
}

/**
 * The hold days of each fish or group from its own arrival, and when it is ready; fish that moved, died or were sold end there.
 * @customfunction FISHDAYS
 * @param log The log with its heading row, such as Log[#All].
 * @param card Two columns, names and values, of the one system in the log.
 * @param [asOf] Count to this time. If omitted, to the last row. Use NOW(), not TODAY().
 * @returns Table with headings: Fish, Arrived, Hold days, Ready on, Note.
 */
export function fishDaysCell(log: any[][], card: any[][], asOf?: any): any[][] {
  const asked = logQuestion({ log, card, asOf });
  if (!asked.ok) return refusal(asked);
  const rows = fishDays(asked.value);
  if (!rows.ok) return refusal(rows);
  return tableAnswer(ok(fishDaysTable({ rows: rows.value, wanted: asked.value.card.days })));
}

/**
 * Deaths of each lot by phase, and the share that died after arrival, beside the published figures of a public aquarium.
 * @customfunction DEATHS
 * @param log The log with its heading row, such as Log[#All].
 * @param card Two columns, names and values, of the one system in the log.
 * @returns Table with headings: Lot, Came in, Dead on arrival, Raising, Hold, Observation, Left, % after arrival.
 */
export function deathsCell(log: any[][], card: any[][]): any[][] {
  const asked = logQuestion({ log, card, needs: ['time'] });
  if (!asked.ok) return refusal(asked);
  const lots = deathsByLot(asked.value);
  if (!lots.ok) return refusal(lots);
  return tableAnswer(ok(deathsTable(lots.value)));
}
