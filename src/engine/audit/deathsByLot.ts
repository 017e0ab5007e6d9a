import { fishCount } from '../fish/fishCount.js';
import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { cardFish } from '../rules/cardFish.js';
import { deathRows } from '../rules/deathRows.js';
import { lotNames } from '../rules/lotNames.js';
import type { Treatment } from '../rules/treatment.js';
import { instantDays } from '../units/quantity.js';
import { lotDeaths, type LotDeaths, type LotSums } from './lotDeaths.js';
import { treatmentPhases, type TreatmentPhases } from './treatmentPhases.js';
import type { ColumnKind } from '../log/headings/columnKinds.js';
import type { Log } from '../log/table/log.js';
import { shown } from '../units/shown.js';

/**
 * The deaths of each lot by the phase of treatment in which they fell; without a column of lots those of all fish.
 *
 * Definition: raising before the first hold, hold from then on, observation once the copper is being taken out.
 *
 * @param treatment log and card
 * @returns a row for each lot in the order in which they come, or the lowest row that gives no number of fish
 */
export function deathsByLot(treatment: Treatment): Result<readonly LotDeaths[], Problem> {
  const { log, card } = treatment;
  const { dead, lot: lotTexts, 'fish in': fishIn, 'fish out': fishOut } = log.texts;
  if (dead === null) return refuse({ code: 'missing-heading', kind: 'dead' });
  const unread = unreadFish(log);
  if (unread !== null) return refuse(unread);
  const lotOf = lotNames(log);
  const lots = new Map<string, LotSums>();
  const sumsOf = (lot: string): LotSums => {
    const sums = lots.get(lot) ?? emptySums();
    lots.set(lot, sums);
    return sums;
  };
  if (lotTexts === null) for (const fish of cardFish(log, card)) addIn(sumsOf(''), fish);
  const phases = treatmentPhases(treatment);
  const died = new Map(deathRows(treatment).map((row) => [row.entry, row]));
  for (let entry = 0; entry < log.count; entry++) {
    const into = fishIn?.[entry] ?? '';
    const out = fishOut?.[entry] ?? '';
    const deaths = died.get(entry);
    if (into !== '') addIn(sumsOf(lotOf(entry)), fishCount(into, 'fish in'));
    if (deaths !== undefined) {
      const sums = sumsOf(deaths.lot);
      sums.deadOnArrival += deaths.onArrival;
      sums[phaseAt(deaths.when, phases)] += deaths.count - deaths.onArrival;
    }
    if (out !== '') addOut(sumsOf(lotOf(entry)), out);
  }
  return ok([...lots].map(([lot, sums]) => lotDeaths(lotTexts === null ? 'all' : lot, sums)));
}

function emptySums(): LotSums {
  return { cameIn: 0, deadOnArrival: 0, raising: 0, hold: 0, observation: 0, out: 0, isOutUnknown: false };
}

function addIn(sums: LotSums, { count, doa }: { readonly count: number; readonly doa: number }): void {
  sums.cameIn += count;
  sums.deadOnArrival += doa;
}

function addOut(sums: LotSums, text: string): void {
  const { groups, count, exact } = fishCount(text, 'fish out');
  // Written in the column of fish that leave, a death is a death; it is counted where deaths are.
  if (groups.every(({ written }) => /\b(?:dead|died|doa)\b/i.test(written))) return;
  const isAll = groups.some(({ all, name }) => all && name === '');
  if (isAll) sums.out = sums.cameIn - sums.deadOnArrival - sums.raising - sums.hold - sums.observation;
  else if (exact && groups.every(({ all }) => !all)) sums.out += count;
  else sums.isOutUnknown = true;
}

function phaseAt(when: number, { holdFrom, holdTo }: TreatmentPhases): 'raising' | 'hold' | 'observation' {
  if (when < holdFrom - instantDays) return 'raising';
  return when > holdTo + instantDays ? 'observation' : 'hold';
}

const deciding: readonly ColumnKind[] = ['time', 'fish in', 'fish out', 'dead'];

/**
 * The lowest row whose fish cannot be counted: it has no time, an error, or says no number, as in "tangs".
 *
 * @param log rows with fish that come in or die
 * @returns the problem of that row; null: every fish is counted
 */
function unreadFish(log: Log): Problem | null {
  let lowest: { readonly row: number; readonly problem: Problem } | null = null;
  for (const fault of log.faults) {
    if (deciding.includes(fault.kind) && (lowest === null || fault.row < lowest.row)) lowest = fault;
  }
  for (const column of ['fish in', 'dead'] as const) {
    const texts = log.texts[column];
    for (let entry = 0; texts !== null && entry < log.count; entry++) {
      const text = texts[entry] ?? '';
      const row = log.row[entry] ?? 0;
      if (text === '' || (lowest !== null && row >= lowest.row) || fishCount(text, column).exact) continue;
      lowest = { row, problem: { code: 'not-a-value', at: { row }, given: shown(text), kind: 'fish count' } };
    }
  }
  return lowest === null ? null : lowest.problem;
}
