import { copperForms, formNames } from '../../../../src/engine/dose/forms.js';
import { seededNumbers, type SeededNumbers } from '../../../../src/engine/level/seededNumbers.js';
import { simulateTank } from '../../../../src/engine/level/simulateTank.js';
import type {
  SimulatedRow,
  SimulatedTank,
  SimulatedTreatment,
} from '../../../../src/engine/level/simulatedTreatment.js';
import {
  copperMgPerLitre,
  copperMgPerMl,
  copperPerRootDay,
  days,
  fraction,
  hours,
  litres,
  serialDay,
} from '../../../../src/engine/units/quantity.js';
import type { KeeperLog, KeeperRow } from './keeperLog.js';

/** Solutions [mg Cu/mL], meters [± mg/L] and the most that is lost in a day, by form. */
const usual = {
  sulfate: { strengths: [0.5, 1, 2], accuracies: [0.006, 0.008, 0.01], loss: 0.03 },
  amine: { strengths: [2, 5, 10], accuracies: [0.01, 0.02, 0.025], loss: 0.015 },
  chelated: { strengths: [5, 10, 20], accuracies: [0.03, 0.05, 0.08], loss: 0.005 },
} as const;

const firstDays = 46023;
const fish = ['ocellaris clownfish', 'firefish', 'royal gramma', 'banggai cardinalfish', 'pajama cardinalfish'];
const well = ['eating well', 'all eating', 'active, eating', 'ate flakes', 'good'];

/**
 * A log without a fault from a simulated tank, or null where the tank itself left the band: then there is a fault in it.
 */
export function faultlessLog(seed: number): KeeperLog | null {
  const random = seededNumbers(seed);
  const treatment = treatmentFor(seed, random);
  const tank = simulateTank(treatment);
  if (!tank.ok) throw new Error(JSON.stringify(tank.problem));
  const { aim, band } = copperForms[treatment.form];
  const holdFrom = heldThroughout(tank.value, band);
  if (holdFrom === null) return null;
  const rows = tank.value.rows.map((row) => rowOf(row, treatment));
  const log = { form: treatment.form, treatment, aim, low: band.low, high: band.high, holdFrom };
  if (random.uniform() < 0.4) joinRows(rows);
  addRest(rows, holdFrom, random);
  return { ...log, rows, card: cardOf(treatment, random), rate: -Math.log1p(-treatment.lossPerDay) };
}

/** The next log without a fault from a seed on. */
export function nextFaultlessLog(seed: number): { readonly log: KeeperLog; readonly left: number } {
  for (let left = 0; left < 1000; left++) {
    const log = faultlessLog(seed + left * 7919);
    if (log !== null) return { log, left };
  }
  throw new Error('no tank keeps its band');
}

export function oneOf<T>(random: SeededNumbers, of: readonly T[]): T {
  return of[Math.floor(random.uniform() * of.length)]!;
}

export function between(random: SeededNumbers, low: number, high: number): number {
  return low + (high - low) * random.uniform();
}

export function wholeBetween(random: SeededNumbers, low: number, high: number): number {
  return Math.floor(between(random, low, high + 1));
}

function treatmentFor(seed: number, random: SeededNumbers): SimulatedTreatment {
  const form = oneOf(random, formNames);
  const { strengths, accuracies, loss } = usual[form];
  const volume = wholeBetween(random, 10, 80) * 10;
  const raisingDays = wholeBetween(random, 3, 6);
  const isChanged = random.uniform() < 0.6;
  return {
    seed,
    start: serialDay(firstDays + wholeBetween(random, 0, 600) + wholeBetween(random, 14, 18) / 48),
    days: days(raisingDays + wholeBetween(random, 18, 36)),
    volume: litres(volume),
    strength: copperMgPerMl(oneOf(random, strengths)),
    form,
    raisingDays: days(raisingDays),
    testsADay: { raising: wholeBetween(random, 1, 2), holding: form === 'sulfate' ? 2 : wholeBetween(random, 1, 2) },
    testJitter: hours(between(random, 0.1, 1)),
    meter: { accuracy: copperMgPerLitre(oneOf(random, accuracies)), percent: fraction(0) },
    lossPerDay: fraction(between(random, 0, loss)),
    drift: copperPerRootDay(between(random, 0.2, 1) * 0.01 * copperForms[form].band.low),
    change: isChanged
      ? { everyDays: days(wholeBetween(random, 4, 9)), share: fraction(between(random, 0.1, 0.3)), replacement: null }
      : null,
    topOffPerDay: litres(random.uniform() < 0.5 ? 0 : between(random, 0.003, 0.015) * volume),
  };
}

/** When the raise is over, if from there on neither the level nor a reading leaves the band. */
function heldThroughout({ rows }: SimulatedTank, band: { low: number; high: number }): number | null {
  const first = rows.findIndex(({ kind, amount }) => kind === 'reading' && amount >= band.low - 1e-9);
  const isInside = (level: number) => level >= band.low - 1e-9 && level <= band.high + 1e-9;
  const held = rows.slice(first);
  const holds = held.every(
    ({ kind, amount, trueLevel }) => isInside(trueLevel) && (kind !== 'reading' || isInside(amount)),
  );
  return first >= 0 && holds ? (rows[first]?.when ?? null) : null;
}

function rowOf({ when, kind, amount, detail }: SimulatedRow, { change }: SimulatedTreatment): KeeperRow {
  switch (kind) {
    case 'reading':
      return { when, copper: amount };
    case 'dose':
      return { when, dose: amount };
    case 'topOff':
      return { when, topOff: amount };
    case 'change':
      return change?.replacement === null
        ? { when, change: amount, note: 'matched' }
        : { when, change: amount, replacement: detail };
    case 'volume':
      throw new Error('no tank is simulated with a corrected volume');
  }
}

/** A dose soon after its test stands in the test's row, as many keepers write it. */
function joinRows(rows: KeeperRow[]): void {
  for (let index = 0; index + 1 < rows.length; index++) {
    const [test, dose] = [rows[index], rows[index + 1]];
    if (test?.copper === undefined || test.dose !== undefined || dose?.dose === undefined) continue;
    if (dose.copper !== undefined || dose.when - test.when > 1.6 / 24) continue;
    test.dose = dose.dose;
    rows.splice(index + 1, 1);
  }
}

/** Fish, signs and the other tests of the water, none of them amiss. */
function addRest(rows: KeeperRow[], holdFrom: number, random: SeededNumbers): void {
  const first = rows[0];
  if (first !== undefined) first.fishIn = `${wholeBetween(random, 4, 12)} ${oneOf(random, fish)}`;
  const salinity = between(random, 30, 35);
  const temperature = between(random, 24, 27);
  const counts = random.uniform() < 0.5;
  for (const row of rows) {
    if (row.copper === undefined) continue;
    if (random.uniform() < 0.3) row.signs = oneOf(random, well);
    if (random.uniform() < 0.4) row.salinity = round(salinity + between(random, -0.5, 0.5), 1);
    if (random.uniform() < 0.4) row.temperature = round(temperature + between(random, -0.5, 0.5), 1);
    if (random.uniform() < 0.3) row.pH = round(between(random, 8, 8.2), 1);
    if (random.uniform() < 0.2) row.ammonia = 0;
    if (counts && row.when >= holdFrom) row.holdDay = Math.floor(row.when - holdFrom + 1e-6) + 1;
  }
}

function cardOf(treatment: SimulatedTreatment, random: SeededNumbers): Map<string, string | number> {
  const card = new Map<string, string | number>([
    ['volume', `${treatment.volume} L`],
    ['form', treatment.form],
    ['strength', `${treatment.strength} mg/mL`],
    ...(random.uniform() < 0.7 ? [['meter accuracy', treatment.meter.accuracy] as const] : []),
    ['fish', oneOf(random, fish)],
    ['temperature', 25],
    ['pH', 8.1],
    ['salinity', 33],
  ]);
  return card;
}

export function round(x: number, places: number): number {
  return Number(x.toFixed(places));
}
