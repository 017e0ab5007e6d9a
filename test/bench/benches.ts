import type { StandInHost } from '../host/standInHost.js';
import { dateAndTime, hourly, levels, shuffled, someBlank, someText, textLevels, type Column } from './cells.js';

export interface Bench {
  readonly name: string;
  /** The most that the ratio to the bare pass may be. */
  readonly limit: number;
  readonly run: () => unknown;
  readonly baseline: () => unknown;
  /** Whether the answer is the one known beforehand: a fast wrong answer is no measurement. */
  readonly holds: (answer: unknown) => boolean;
}

/** What nobody can do without: each cell is looked at once, its type asked and its number compared. */
function barePass(columns: readonly Column[]): number {
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
  const holdDays = (name: string, limit: number, when: Column, copper: Column): Bench => ({
    name: `HOLDDAYS, ${name}`,
    limit,
    run: () => host.callBare('HOLDDAYS', when, copper, 'chelated'),
    baseline: () => barePass([when, copper]),
    holds: (answer) => typeof answer === 'number' && Math.abs(answer - (rows - 1) / 24) < 1e-5,
  });
  const [mixedWhen = [], mixedCopper = []] = shuffled([hourly(rows), levels(rows)]);
  const tableRows = Math.min(rows, 38_000);
  const everySixHours = hourly(tableRows).map((_, i): number[] => [30000 + i / 4]);
  const tableLevels = levels(tableRows);
  return [
    holdDays('numbers', 3, hourly(rows), levels(rows)),
    holdDays('5 % of the readings text', 6, hourly(rows), someText(rows)),
    holdDays('all readings text', 12, hourly(rows), textLevels(rows)),
    holdDays('8 % of the readings blank', 3, hourly(rows), someBlank(rows)),
    holdDays('date and time in two columns', 5, dateAndTime(rows), levels(rows)),
    holdDays('rows in no order', 12, mixedWhen, mixedCopper),
    {
      name: `HOLDROWS, ${tableRows} rows`,
      limit: 60,
      run: () => host.callBare('HOLDROWS', everySixHours, tableLevels, 'chelated'),
      baseline: () => barePass([everySixHours, tableLevels]),
      holds: (answer) => Array.isArray(answer) && answer.length === tableRows + 1,
    },
  ];
}
