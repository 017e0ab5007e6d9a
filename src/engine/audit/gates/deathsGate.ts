import * as limits from '../../limits/limits.js';
import { deathRows } from '../../rules/deathRows.js';
import type { Treatment } from '../../rules/treatment.js';
import { secondDays } from '../../units/quantity.js';
import type { Gate } from './gate.js';

const quietDays = limits.quietDays.value;

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
