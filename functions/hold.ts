import {
  holdDays,
  holdEnds,
  holdRows,
  holdRowsTable,
  holdSpans,
  holdsTable,
  holdStart,
  ok,
  readingsAnswer,
  traceAnswer,
} from '../src/engine/index.js';
import { numberAnswer, refusal, tableAnswer } from './answer.js';
import { holdQuestion } from './holdQuestion.js';

/**
 * Unbroken days at therapeutic level, from the running hold's start to the last reading or to a given time; 0 if none runs.
 * @customfunction HOLDDAYS
 * @param when Times of the tests: one column, or date and time of day in two.
 * @param copper Readings, in the same rows. [mg/L]
 * @param band A copper form, a low limit, or two cells low and high. [mg/L]
 * @param [asOf] Count to this time. If omitted, to the last reading. Use NOW(), not TODAY().
 * @param [arrived] When the fish came in. If omitted, the hold counts from its start.
 * @param [longestGap] A longer gap between tests restarts the hold; "none": no limit. [h] If omitted, 96.
 * @param [confirm] 2: the hold starts at the second reading in a row. If omitted, 1.
 * @returns Days held. [days]
 */
export function holdDaysCell(
  when: any[][],
  copper: any[][],
  band: any[][],
  asOf?: any,
  arrived?: any,
  longestGap?: any,
  confirm?: any,
): number {
  const asked = holdQuestion({ when, copper, band, asOf, arrived, longestGap, confirm });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(traceAnswer(asked.value, holdDays));
}

/**
 * Date and time at which the running hold began. Format the cell as a date.
 * @customfunction HOLDSTART
 * @param when Times of the tests: one column, or date and time of day in two.
 * @param copper Readings, in the same rows. [mg/L]
 * @param band A copper form, a low limit, or two cells low and high. [mg/L]
 * @param [asOf] Leave later readings out. If omitted, all readings count.
 * @param [arrived] When the fish came in. If omitted, the hold counts from its start.
 * @param [longestGap] A longer gap between tests restarts the hold; "none": no limit. [h] If omitted, 96.
 * @param [confirm] 2: the hold starts at the second reading in a row. If omitted, 1.
 * @returns Serial date and time.
 */
export function holdStartCell(
  when: any[][],
  copper: any[][],
  band: any[][],
  asOf?: any,
  arrived?: any,
  longestGap?: any,
  confirm?: any,
): number {
  const asked = holdQuestion({ when, copper, band, asOf, arrived, longestGap, confirm });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(traceAnswer(asked.value, holdStart));
}

/**
 * Date and time when the hold reached its wanted days, or when the running one will if nothing breaks it. Format the cell as a date.
 * @customfunction HOLDENDS
 * @param when Times of the tests: one column, or date and time of day in two.
 * @param copper Readings, in the same rows. [mg/L]
 * @param band A copper form, a low limit, or two cells low and high. [mg/L]
 * @param [days] Unbroken days wanted. [days] If omitted, 30.
 * @param [arrived] When the fish came in. If omitted, the hold counts from its start.
 * @param [longestGap] A longer gap between tests restarts the hold; "none": no limit. [h] If omitted, 96.
 * @param [confirm] 2: the hold starts at the second reading in a row. If omitted, 1.
 * @returns Serial date and time.
 */
export function holdEndsCell(
  when: any[][],
  copper: any[][],
  band: any[][],
  days?: any,
  arrived?: any,
  longestGap?: any,
  confirm?: any,
): number {
  const asked = holdQuestion({ when, copper, band, days, arrived, longestGap, confirm });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(traceAnswer(asked.value, holdEnds));
}

/**
 * Every reading in time order with its status, its hold day, the days done, and a note.
 * @customfunction HOLDROWS
 * @param when Times of the tests: one column, or date and time of day in two.
 * @param copper Readings, in the same rows. [mg/L]
 * @param band A copper form, a low limit, or two cells low and high. [mg/L]
 * @param [asOf] Leave later readings out. If omitted, all readings count.
 * @param [arrived] When the fish came in. If omitted, the hold counts from its start.
 * @param [longestGap] A longer gap between tests restarts the hold; "none": no limit. [h] If omitted, 96.
 * @param [confirm] 2: the hold starts at the second reading in a row. If omitted, 1.
 * @returns Table with headings: When, Copper, Status, Hold day, Days done, Row, Note.
 */
export function holdRowsCell(
  when: any[][],
  copper: any[][],
  band: any[][],
  asOf?: any,
  arrived?: any,
  longestGap?: any,
  confirm?: any,
): any[][] {
  const asked = holdQuestion({ when, copper, band, asOf, arrived, longestGap, confirm });
  if (!asked.ok) return refusal(asked);
  return tableAnswer(
    readingsAnswer(asked.value, (columns, terms, limits) => ok(holdRowsTable(holdRows(columns, terms, limits)))),
  );
}

/**
 * Every hold in the log: from, to, days, whether it was enough, and what ended it.
 * @customfunction HOLDS
 * @param when Times of the tests: one column, or date and time of day in two.
 * @param copper Readings, in the same rows. [mg/L]
 * @param band A copper form, a low limit, or two cells low and high. [mg/L]
 * @param [days] Unbroken days wanted. [days] If omitted, 30.
 * @param [arrived] When the fish came in. If omitted, every hold counts from its start.
 * @param [longestGap] A longer gap between tests restarts the hold; "none": no limit. [h] If omitted, 96.
 * @param [confirm] 2: the hold starts at the second reading in a row. If omitted, 1.
 * @returns Table with headings: From, To, Days, Enough, Ended by, Row.
 */
export function holdsCell(
  when: any[][],
  copper: any[][],
  band: any[][],
  days?: any,
  arrived?: any,
  longestGap?: any,
  confirm?: any,
): any[][] {
  const asked = holdQuestion({ when, copper, band, days, arrived, longestGap, confirm });
  if (!asked.ok) return refusal(asked);
  return tableAnswer(
    traceAnswer(asked.value, (trace, terms, wanted) => ok(holdsTable(holdSpans(trace, terms, wanted)))),
  );
}
