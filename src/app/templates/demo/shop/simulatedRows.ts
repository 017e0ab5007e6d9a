import {
  copperForms,
  copperMgPerLitre,
  copperMgPerMl,
  copperPerRootDay,
  days,
  fraction,
  hours,
  litres,
  seededNumbers,
  serialDay,
  simulateTank,
  type SeededNumbers,
  type SimulatedRow,
} from '../../../../engine/index.js';
import { serialOf } from '../../sheets/rowsOf.js';
import type { ShopSystem } from './shopSystems.js';

/** A row of the shop's shared sheet, as somebody wrote it. */
export interface ShopRow {
  readonly system: string;
  /** [serial day] */
  when: number;
  /** mg/L, or what stands in the cell. */
  copper?: number | string;
  /** [mL] */
  dose?: number;
  /** [L] */
  change?: number;
  topOff?: number;
  /** [g/kg] */
  salinity?: number;
  /** [°C] */
  temperature?: number;
  fishIn?: string;
  fishOut?: string;
  dead?: number;
  eating?: string;
  note?: string;
  by: string;
}

/** What is done within so many days of a test or a top-off is written into its row. */
const sameVisit = 0.6 / 24;
/** Half an hour that a dose goes its own way after a test, as a share of what a level wanders in a day. */
const driftShare = 0.006;
const noon = 0.5;
const fedAt = 13.5 / 24;
const fiveMinutes = 5 / 1440;

/** The rows that the shop keeps of a simulated tank up to a moment, before anything goes wrong. The same for the same seed. */
export function simulatedRows(system: ShopSystem, seed: number, asOf: number): ShopRow[] {
  const start = serialOf(system.start);
  const tank = simulateTank({
    seed,
    start: serialDay(start),
    days: days(Math.ceil(asOf - start)),
    volume: litres(system.volume),
    strength: copperMgPerMl(system.strength),
    form: system.form,
    raisingDays: days(system.raisingDays),
    testsADay: { raising: 2, holding: system.testsADay },
    testJitter: hours(0.5),
    meter: { accuracy: copperMgPerLitre(system.meter), percent: fraction(0) },
    lossPerDay: fraction(system.lossPerDay),
    drift: copperPerRootDay(driftShare * copperForms[system.form].band.low),
    change: { everyDays: days(system.changeEveryDays), share: fraction(0.15), replacement: null },
    topOffPerDay: litres(0.008 * system.volume),
  });
  if (!tank.ok) throw new Error(`${system.name}: ${tank.problem.code}`);
  const rows: ShopRow[] = [];
  for (const row of tank.value.rows) if (row.when <= asOf) addRow(rows, system.name, row);
  addRest(rows, system, asOf, seededNumbers(seed + 1));
  return rows;
}

function addRow(rows: ShopRow[], system: string, { when, kind, amount }: SimulatedRow): void {
  const last = rows[rows.length - 1];
  const joins = last !== undefined && when - last.when <= sameVisit && last.dose === undefined && kind !== 'reading';
  const row: ShopRow = joins ? last : { system, when, by: keeperAt(when) };
  if (!joins) rows.push(row);
  switch (kind) {
    case 'reading':
      row.copper = amount;
      break;
    case 'dose':
      row.dose = amount;
      break;
    case 'topOff':
      row.topOff = amount;
      break;
    case 'change':
      row.change = amount;
      row.note = 'matched';
      break;
    case 'volume':
      throw new Error('no tank is simulated with a corrected volume');
  }
}

/** Three people: mornings by turns, evenings the third. */
function keeperAt(when: number): string {
  if (when % 1 > noon) return 'JK';
  return Math.floor(when) % 7 < 4 ? 'OV' : 'TM';
}

/** Fish, salinity, temperature, and a row when they are fed in the afternoon; all as it should be. */
function addRest(rows: ShopRow[], { name, fish, raisingDays }: ShopSystem, asOf: number, random: SeededNumbers): void {
  const [first] = rows;
  if (first === undefined) return;
  first.fishIn = fish;
  first.note = 'baseline, no copper yet';
  const tested = rows.filter(({ copper, when }) => copper !== undefined && when % 1 < noon);
  for (const { when } of tested) {
    const fed = Math.floor(when) + fedAt + Math.round(12 * random.uniform()) * fiveMinutes;
    const eating = random.uniform() < 0.8 ? 'yes' : 'all eating';
    if (fed <= asOf) rows.push({ system: name, when: fed, by: keeperAt(when), eating });
  }
  for (const row of tested) {
    row.temperature = rounded(25.2 + 0.3 * random.normal(), 1);
    if (random.uniform() < 0.3) row.salinity = rounded(32 + 0.4 * random.normal(), 1);
  }
  const back = tested.find(({ when }) => when - first.when >= raisingDays);
  if (back !== undefined) back.note = 'in the band';
  rows.sort((a, b) => a.when - b.when);
}

function rounded(x: number, places: number): number {
  return Number(x.toFixed(places));
}
