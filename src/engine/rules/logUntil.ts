import { type Log, logEntries } from '../log/table/log.js';
import { instantDays } from '../units/quantity.js';

/** The entries of a log up to a moment; those of the same instant are not after it. */
export function logUntil(log: Log, asOf: number): Log {
  let count = log.count;
  while (count > 0 && (log.when[count - 1] ?? NaN) - asOf >= instantDays) count--;
  if (count === log.count) return log;
  return logEntries(
    log,
    Uint32Array.from({ length: count }, (_, index) => index),
    (when) => !(when - asOf >= instantDays),
  );
}
