import { fishCount } from '../fish/fishCount.js';
import type { FishGroup } from '../fish/fishGroup.js';
import { headingsOf } from '../log/headings/readHeadings.js';
import { cardFish } from './cardFish.js';
import { lotNames } from './lotNames.js';
import { saidTexts } from './saidTexts.js';
import type { Treatment } from './treatment.js';

/** A row of a log in which fish died. */
export interface DeathRow {
  readonly entry: number;
  readonly when: number;
  readonly row: number;
  /** '' where the log has no lots, or the row none. */
  readonly lot: string;
  readonly written: string;
  readonly groups: readonly FishGroup[];
  /** At least so many. */
  readonly count: number;
  /** Of these, dead on arrival. */
  readonly onArrival: number;
  /** False where the cell gives no number that can be read. */
  readonly exact: boolean;
  /** Fish of the lot that came in alive so far; null: not known. */
  readonly cameAlive: number | null;
}

interface LotSoFar {
  came: number;
  dead: number;
  counted: boolean;
}

/**
 * The deaths of a log, row by row. What dies in the row that first brings a lot in was dead on arrival, and so is what a
 * cell or the heading calls so; dead on arrival in the cell of fish coming in is not counted again.
 *
 * @param treatment log and card
 * @returns rows in time order
 */
export function deathRows(treatment: Treatment): readonly DeathRow[] {
  const { log } = treatment;
  const { dead, 'fish in': fishIn, 'fish out': fishOut } = log.texts;
  const noted = notedDeaths(treatment);
  if (noted.size === 0 && allSayNothing(dead) && allSayNothing(fishOut)) return [];
  const rows: DeathRow[] = [];
  const isDoaColumn = /\bdoa\b/i.test(headingsOf(log.headings, 'dead')[0]?.text ?? '');
  const lotOf = lotNames(log);
  const lots = new Map<string, LotSoFar>();
  for (let entry = 0; entry < log.count; entry++) {
    const into = fishIn?.[entry] ?? '';
    const cell = deathsIn(dead?.[entry] ?? '', fishOut?.[entry] ?? '');
    const note = saysNothing(cell) ? noted.get(entry) : undefined;
    const written = note?.written ?? cell;
    if (into === '' && saysNothing(written)) continue;
    const lot = lotOf(entry);
    const soFar = lotSoFar(lots, treatment, lot);
    const isFirst = soFar.came === 0 && into !== '';
    const toldInside = addArrivals(soFar, into);
    if (saysNothing(written)) continue;
    const { groups, count: all, doa, exact } = note ?? fishCount(written, 'dead');
    const onArrival = isDoaColumn || isFirst ? all : doa;
    const told = Math.min(onArrival, toldInside);
    soFar.dead += onArrival - told;
    if (all === told && exact) continue;
    rows.push({
      entry,
      when: log.when[entry] ?? NaN,
      row: log.row[entry] ?? 0,
      lot,
      written,
      groups,
      count: all - told,
      onArrival: onArrival - told,
      exact,
      cameAlive: soFar.counted && soFar.came > soFar.dead ? soFar.came - soFar.dead : null,
    });
  }
  return rows;
}

interface NotedDeaths {
  readonly written: string;
  readonly groups: readonly FishGroup[];
  readonly count: number;
  readonly doa: number;
  readonly exact: boolean;
}

/** Deaths that only a note says, by entry: as many as it counts, at least one. */
function notedDeaths({ log }: Treatment): ReadonlyMap<number, NotedDeaths> {
  const noted = new Map<number, NotedDeaths>();
  for (const { entry, column, text, facts } of saidTexts(log)) {
    if (column !== 'note' && column !== 'signs') continue;
    const here = facts.filter(
      ({ kind, polarity }) => polarity === 'now' && (kind === 'deaths' || kind === 'dead on arrival'),
    );
    const count = here.reduce((most, fact) => Math.max(most, fact.count ?? 1), 0);
    if (count === 0) continue;
    const doa = here.every(({ kind }) => kind === 'dead on arrival') ? count : 0;
    noted.set(entry, { written: text, groups: [], count, doa, exact: here.some((fact) => fact.count !== null) });
  }
  return noted;
}

/** A death written in the column of fish that leave is a death all the same. */
function deathsIn(dead: string, out: string): string {
  return saysNothing(dead) && out !== '' && /\b(?:dead|died|dies|doa)\b/i.test(out) ? out : dead;
}

function allSayNothing(texts: readonly string[] | null): boolean {
  return texts === null || texts.every(saysNothing);
}

function saysNothing(text: string): boolean {
  return text === '' || text === '0';
}

function lotSoFar(lots: Map<string, LotSoFar>, treatment: Treatment, lot: string): LotSoFar {
  const soFar = lots.get(lot) ?? atStart(treatment, lot);
  lots.set(lot, soFar);
  return soFar;
}

function atStart({ log, card }: Treatment, lot: string): LotSoFar {
  const fish = lot === '' && log.texts.lot === null ? cardFish(log, card) : [];
  return {
    came: fish.reduce((sum, { count }) => sum + count, 0),
    dead: 0,
    counted: fish.every(({ exact }) => exact),
  };
}

/** Adds what comes in, and gives how many of it are said to be dead on arrival there. */
function addArrivals(lot: LotSoFar, text: string): number {
  if (text === '') return 0;
  const { count, doa, exact } = fishCount(text, 'fish in');
  lot.came += count;
  lot.dead += doa;
  if (!exact) lot.counted = false;
  return doa;
}
