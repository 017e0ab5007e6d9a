import { fishCount } from '../fish/fishCount.js';
import { instantDays } from '../units/quantity.js';
import type { Finding } from './finding.js';
import { lotNames } from './lotNames.js';
import type { Rule } from './rule.js';
import type { Treatment } from './treatment.js';

/** So many in a day, or this share of a lot, and something is wrong that counting days does not mend. [Practice] */
const mostADay = 3;
const mostOfLot = 0.1;
const window = 1;

interface LotSoFar {
  /** Alive at arrival. */
  came: number;
  /** Whether every fish of it is known to have been counted. */
  counted: boolean;
  /** Deaths of the last day that no finding has named. */
  recent: { when: number; count: number }[];
}

/**
 * Three deaths, or a tenth of a lot, within 24 hours are a danger; any other death is noted. Fish dead on arrival died of
 * something else.
 *
 * Source: [Practice].
 */
export const deaths: Rule = (treatment) => {
  const { log, card } = treatment;
  const { dead, 'fish in': fishIn } = log.texts;
  const found: Finding[] = [];
  if (dead === null || dead.every((text) => text === '' || text === '0')) return found;
  const lotOf = lotNames(log);
  const lots = new Map<string, LotSoFar>();
  for (let index = 0; index < log.count; index++) {
    const into = fishIn?.[index] ?? '';
    const died = dead[index] ?? '';
    if (into === '' && (died === '' || died === '0')) continue;
    const lot = lotOf(index);
    const soFar = lots.get(lot) ?? emptyLot(lot, card.fish);
    lots.set(lot, soFar);
    const before = soFar.came;
    if (into !== '') addArrivals(soFar, into);
    if (died !== '' && died !== '0') found.push(...findingOf(treatment, { index, lot, died, soFar, before }));
  }
  return found;
};

function emptyLot(lot: string, fish: readonly string[]): LotSoFar {
  const ofCard = lot === '' ? fish.map((name) => fishCount(name, 'fish in')) : [];
  const came = ofCard.reduce((sum, { count }) => sum + count, 0);
  return { came, counted: ofCard.every(({ exact }) => exact), recent: [] };
}

function addArrivals(lot: LotSoFar, text: string): void {
  const { count, doa, exact } = fishCount(text, 'fish in');
  lot.came += count - doa;
  if (!exact) lot.counted = false;
}

interface Death {
  readonly index: number;
  readonly lot: string;
  readonly died: string;
  readonly soFar: LotSoFar;
  /** Of the lot, before this row. */
  readonly before: number;
}

function findingOf({ log }: Treatment, { index, lot, died, soFar, before }: Death): Finding[] {
  const { count, doa } = fishCount(died, 'dead');
  if (count === 0) return [];
  const when = log.when[index] ?? NaN;
  // Nothing of the lot was in before: what died in its first row came dead.
  const onArrival = before === 0 && soFar.came > 0 ? count : doa;
  const at = { when, row: log.row[index] ?? null, source: 'Practice' } as const;
  soFar.came -= onArrival > 0 && onArrival <= soFar.came ? onArrival : 0;
  soFar.recent = soFar.recent.filter((death) => when - death.when < window - instantDays);
  if (count > onArrival) soFar.recent.push({ when, count: count - onArrival });
  const sum = soFar.recent.reduce((total, death) => total + death.count, 0);
  const of = soFar.counted && soFar.came > 0 ? soFar.came : null;
  if (count > onArrival && (sum >= mostADay || (of !== null && sum >= of * mostOfLot))) {
    const hours = (when - (soFar.recent[0]?.when ?? when)) * 24;
    soFar.recent = [];
    return [{ code: 'deaths', count: sum, hours, lot, of, severity: 'danger', ...at }];
  }
  return [{ code: 'death-noted', count, onArrival, lot, severity: 'note', ...at }];
}
