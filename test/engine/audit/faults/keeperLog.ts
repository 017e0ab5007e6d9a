import type { FormName } from '../../../../src/engine/dose/forms.js';
import type { SimulatedTreatment } from '../../../../src/engine/level/simulatedTreatment.js';

/** What a keeper writes in one row; volumes in L and mL, levels in mg/L. Text stands as it is. */
export interface KeeperRow {
  /** [serial day] */
  when: number;
  copper?: number | string;
  dose?: number;
  change?: number;
  replacement?: number;
  topOff?: number;
  note?: string;
  signs?: string;
  fishIn?: string;
  fishOut?: string;
  dead?: number;
  salinity?: number;
  temperature?: number;
  pH?: number;
  ammonia?: number;
  holdDay?: number;
}

/** A log, its card, and what the planter needs to know of the treatment. */
export interface KeeperLog {
  readonly rows: KeeperRow[];
  readonly card: Map<string, string | number>;
  readonly form: FormName;
  readonly treatment: SimulatedTreatment;
  /** Level to keep, and the limits of its band. [mg/L] */
  readonly aim: number;
  readonly low: number;
  readonly high: number;
  /** The first reading in the band of the hold that ends the raise. [serial day] */
  readonly holdFrom: number;
  /** k of the loss. [1/day] */
  readonly rate: number;
}

/** A row with a bare reading. */
export type Tested = KeeperRow & { copper: number };

export function isTested(row: KeeperRow): row is Tested {
  return typeof row.copper === 'number';
}

/** Tested rows of the hold, without so many at either end. */
export function heldRows(log: KeeperLog, fromStart = 0, fromEnd = 0): Tested[] {
  const held = log.rows.filter((row): row is Tested => isTested(row) && row.when >= log.holdFrom);
  return held.slice(fromStart, held.length - fromEnd);
}

/** Puts a row in its place by time; after those of the same time. */
export function insertRow(log: KeeperLog, row: KeeperRow): KeeperRow {
  const later = log.rows.findIndex(({ when }) => when > row.when);
  log.rows.splice(later < 0 ? log.rows.length : later, 0, row);
  return row;
}

/** Moves the readings between two times by what the loss leaves of copper that came in or went out at the first. */
export function moveLevel(log: KeeperLog, from: number, to: number, by: number): void {
  for (const row of log.rows) {
    if (row.when <= from || row.when >= to || !isTested(row)) continue;
    row.copper = readingOf(row.copper + by * Math.exp(-log.rate * (row.when - from)));
  }
}

/** To 0.01 mg/L, not below 0. */
export function readingOf(level: number): number {
  return Math.max(0, Math.round(level * 100) / 100);
}

/** mL, as a syringe measures them, that raise the level by so much. */
export function doseFor({ treatment }: KeeperLog, rise: number): number {
  return Math.max(0.1, Math.round(((rise * treatment.volume) / treatment.strength) * 10) / 10);
}

/** Whether a number may also be a slip of the pen: two of its digits changed over, or its point moved. */
export function isMiswritten(written: number, level: number): boolean {
  const [a = '', b = '', c = ''] = written.toFixed(2).replace('.', '');
  const meant = [`${b}.${a}${c}`, `${a}.${c}${b}`].map(Number).concat(written * 10, written / 10);
  return meant.some((each) => Math.abs(each - level) < 0.25 * level);
}
