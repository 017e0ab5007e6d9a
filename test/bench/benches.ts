import type { Measuring } from './medianRatio.js';
import type { StandInHost } from '../host/standInHost.js';
import {
  dateAndTime,
  everySixHours,
  hourly,
  levels,
  shuffledPair,
  someBlank,
  someText,
  textLevels,
  type Column,
} from './cells.js';

export interface Bench {
  readonly name: string;
  /** The most that the ratio to the bare pass may be. */
  readonly limit: number;
  /** Where it is not measured as all are. */
  readonly measuring?: Measuring;
  /** Makes the cells, and no sooner: what other benches hold in memory would be the collector's work here. */
  readonly prepare: () => {
    readonly run: () => unknown;
    readonly baseline: () => unknown;
    /** Whether the answer is the one known beforehand: a fast wrong answer is no measurement. */
    readonly holds: (answer: unknown) => boolean;
  };
}

/** What nobody can do without: each cell is looked at once, its type asked and its number compared. */
export function barePass(columns: readonly Column[]): number {
  let inBand = 0;
  for (const column of columns) {
    for (let row = 0; row < column.length; row++) {
      const cells = column[row] ?? [];
      for (let at = 0; at < cells.length; at++) {
        const cell = cells[at];
        if (typeof cell === 'number' ? cell >= 1.95 : cell !== null && cell !== '') inBand++;
      }
    }
  }
  return inBand;
}

/** HOLDDAYS on `rows` readings, all in the band, in the ways that people log them; and HOLDROWS on a table that still fits. */
export function benches(host: StandInHost, rows: number): Bench[] {
  const holdDays = (name: string, limit: number, cells: () => readonly [when: Column, copper: Column]): Bench => ({
    name: `HOLDDAYS, ${name}`,
    limit,
    prepare: () => {
      const [when, copper] = cells();
      return {
        run: () => host.callBare('HOLDDAYS', when, copper, 'chelated'),
        baseline: () => barePass([when, copper]),
        holds: (answer) => typeof answer === 'number' && Math.abs(answer - (rows - 1) / 24) < 1e-5,
      };
    },
  });
  return [
    holdDays('numbers', 3, () => [hourly(rows), levels(rows)]),
    holdDays('5 % of the readings text', 6, () => [hourly(rows), someText(rows)]),
    holdDays('all readings text', 12, () => [hourly(rows), textLevels(rows)]),
    holdDays('8 % of the readings blank', 4, () => [hourly(rows), someBlank(rows)]),
    holdDays('date and time in two columns', 6, () => [dateAndTime(rows), levels(rows)]),
    holdDays('rows in no order', 40, () => shuffledPair(hourly(rows), levels(rows))),
    holdRows(host, Math.min(rows, 38_000)),
  ];
}

function holdRows(host: StandInHost, rows: number): Bench {
  return {
    name: `HOLDROWS, ${rows} rows`,
    limit: 500,
    prepare: () => {
      const [when, copper] = [everySixHours(rows), levels(rows)];
      return {
        run: () => host.callBare('HOLDROWS', when, copper, 'chelated'),
        baseline: () => barePass([when, copper]),
        holds: (answer) => Array.isArray(answer) && answer.length === rows + 1,
      };
    },
  };
}

/** HOLDCHANCE is heavy sums rather than a pass over cells: its limit is a time. */
export function holdChance(host: StandInHost): () => unknown {
  const [when, copper] = [everySixHours(200), levels(200)];
  return () => host.callBare('HOLDCHANCE', when, copper, 'chelated', 0.1);
}
