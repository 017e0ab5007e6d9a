import type { Log } from '../log/table/log.js';

/**
 * The lot that each entry of a log belongs to: as first written, matched without case. A row without one belongs to the
 * only lot there is, else to none.
 *
 * @param log with or without a column of lots
 * @returns the lot of an entry; '' where the log has no lots or the row none
 */
export function lotNames({ texts, count }: Log): (index: number) => string {
  const lots = texts.lot;
  if (lots === null) return () => '';
  const spelled = new Map<string, string>();
  for (let index = 0; index < count; index++) {
    const lot = lots[index] ?? '';
    if (lot !== '' && !spelled.has(lot.toLowerCase())) spelled.set(lot.toLowerCase(), lot);
  }
  const [only = ''] = spelled.size === 1 ? spelled.values() : [];
  return (index) => {
    const lot = lots[index] ?? '';
    return lot === '' ? only : (spelled.get(lot.toLowerCase()) ?? lot);
  };
}
