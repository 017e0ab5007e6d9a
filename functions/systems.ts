import { ok, systemCards, systemsNow, systemsTable, timeIn } from '../src/engine/index.js';
import { refusal, tableAnswer } from './answer.js';
import { cellOf } from './cellOf.js';
import { readSharedLog } from './logQuestion.js';
import { rangeOf } from './rangeOf.js';

/**
 * How each system of a shared workbook stands at a given time, and what to do next in it.
 * @customfunction SYSTEMS
 * @param log The log of all systems with its heading row, a column of system names in it.
 * @param cards A heading row of card names, system first, and a row for each system.
 * @param asOf The moment, such as NOW().
 * @returns Table with headings: System, Last test, Copper, Status, Hold day, Days left, Do now, Stage, Hours since test.
 */
export function systemsCell(log: any[][], cards: any[][], asOf: any): any[][] {
  const now = timeIn(cellOf(asOf))('as of');
  if (!now.ok) return refusal(now);
  const read = systemCards({ range: rangeOf(cards), cellOf });
  if (!read.ok) return refusal(read);
  const shared = readSharedLog(log, read.value);
  if (!shared.ok) return refusal(shared);
  return tableAnswer(ok(systemsTable(systemsNow(shared.value, read.value, now.value), now.value)));
}
