import * as limits from '../../limits/limits.js';
import type { SignRow } from '../../rules/signs/signSteps.js';
import { signsAfterArrival } from '../../rules/signsAfterArrival.js';
import type { Treatment } from '../../rules/treatment.js';
import { secondDays } from '../../units/quantity.js';
import type { Gate } from './gate.js';
import { deathRows } from '../../rules/deathRows.js';

const quietDays = limits.quietDays.value;

/**
 * Whether the last seven days were without signs. A column of signs that is used counts: a row without a text says that
 * none was seen.
 */
export function signsGate(treatment: Treatment): Gate {
  const { log, now } = treatment;
  const name = 'signs';
  const rows = signsAfterArrival(treatment).filter(({ text }) => text !== '');
  const since = now - quietDays;
  const lately = rows.filter(({ when }) => when > since + secondDays);
  const notKnown = (why: Gate['why']): Gate => ({ name, met: 'not known', since: null, why });
  const again = rows.find(({ step }) => step === 'stop copper');
  if (again !== undefined) return { name, met: 'no', since: null, why: { code: 'second-time', ...told(again) } };
  const sign = last(lately, ({ reading }) => reading === 'sign' || reading === 'easing');
  if (sign !== null) return { name, met: 'no', since: null, why: { code: 'sign', ...told(sign) } };
  const isWritten = log.count > 0 && (log.when[log.count - 1] ?? NaN) > since + secondDays;
  if (rows.length === 0 || !isWritten) {
    return notKnown({ code: 'nothing-written', about: 'signs', days: quietDays });
  }
  const unread = last(lately, ({ reading }) => reading === 'unread');
  const clear = last(lately, ({ reading }) => reading === 'clear');
  if (unread !== null && (clear === null || unread.when > clear.when)) {
    return notKnown({ code: 'unread-sign', text: unread.text, row: unread.row });
  }
  const before = last(rows, ({ reading }) => reading !== 'unread');
  if (before !== null && before.reading !== 'clear') {
    return notKnown({ code: 'no-recovery', text: before.text, row: before.row });
  }
  const earlier = last(rows, ({ reading }) => reading === 'sign' || reading === 'easing');
  const quietSince = earlier === null ? null : earlier.when + quietDays;
  return { name, met: 'yes', since: quietSince, why: { code: 'none-noted', about: 'signs', days: quietDays } };
}

function last(rows: readonly SignRow[], fits: (row: SignRow) => boolean): SignRow | null {
  for (let index = rows.length - 1; index >= 0; index--) {
    const row = rows[index];
    if (row !== undefined && fits(row)) return row;
  }
  return null;
}

function told({ text, row, when }: SignRow): { text: string; row: number; when: number } {
  return { text, row, when };
}

/** Whether the last seven days were without deaths; fish dead on arrival died of something else. */
export function deathsGate(treatment: Treatment): Gate {
  const { log, now } = treatment;
  const name = 'deaths';
  const since = now - quietDays;
  const died = deathRows(treatment).filter(({ count, onArrival, exact }) => count > onArrival || !exact);
  const last = died[died.length - 1];
  if (last !== undefined && last.when > since + secondDays) {
    const { row, when } = last;
    const count = died.reduce(
      (sum, each) => sum + (each.when > since + secondDays ? each.count - each.onArrival : 0),
      0,
    );
    return { name, met: 'no', since: null, why: { code: 'died', count, days: quietDays, row, when } };
  }
  const isWritten = log.count > 0 && (log.when[log.count - 1] ?? NaN) > since + secondDays;
  if (log.texts.dead === null || !isWritten) {
    return { name, met: 'not known', since: null, why: { code: 'nothing-written', about: 'deaths', days: quietDays } };
  }
  const quietSince = last === undefined ? null : last.when + quietDays;
  return { name, met: 'yes', since: quietSince, why: { code: 'none-noted', about: 'deaths', days: quietDays } };
}
