import { oneOf, round } from './faultlessLog.js';
import type { FaultKind } from './faultKind.js';
import { heldRows, isMiswritten, isTested, type KeeperLog, type KeeperRow, type Tested } from './keeperLog.js';

/** Slips of the pen in the copper column. The water itself is as it was. */
export const slipKinds: readonly FaultKind[] = [
  slip('a reading ten times too high', (level) => level * 10),
  slip('a reading a tenth of what it was', (level) => level / 10),
  slip('ug/L written as mg/L', (level) => round(level * 1000, 3)),
  slip('mg/L written as ug/L', (level) => `${level} ug/L`),
  slip('a lost decimal point', (level) => Number(level.toFixed(2).replace('.', ''))),
  {
    name: 'swapped digits',
    codes: ['unit-slip'],
    plant: (log, random) => {
      const fitting = slipRows(log).filter(({ copper }) => swapsOf(copper, log).length > 0);
      if (fitting.length === 0) return null;
      const row: KeeperRow & { copper: number } = oneOf(random, fitting);
      row.copper = oneOf(random, swapsOf(row.copper, log));
      return [row];
    },
  },
  {
    name: 'two rows changed over while raising',
    codes: ['swapped-rows'],
    plant: (log, random) => {
      const raising = log.rows.filter((row): row is Tested => isTested(row) && row.when < log.holdFrom);
      const pairs = raising
        .slice(1, -1)
        .map((row, index) => [row, raising[index + 2]] as const)
        .filter(([a, b]) => b !== undefined && b.copper - a.copper > 0.18 * log.aim);
      if (pairs.length === 0) return null;
      const [first, second] = oneOf(random, pairs);
      if (second === undefined) return null;
      [first.copper, second.copper] = [second.copper, first.copper];
      return [first, second];
    },
  },
  {
    name: "another system's reading",
    codes: ['swapped-systems'],
    plant: (log, random) => {
      const levels = { sulfate: [0.48, 0.52, 2.1, 2.4], amine: [0.2, 2.1, 2.3], chelated: [0.2, 0.47, 0.51] } as const;
      const row = oneOf(random, heldRows(log, 2, 3));
      const written = oneOf<number>(random, levels[log.form]);
      if (isMiswritten(written, row.copper)) return null;
      row.copper = written;
      return [row];
    },
  },
];

function slip(name: string, written: (level: number) => number | string): FaultKind {
  return {
    name,
    codes: ['unit-slip'],
    plant: (log, random) => {
      const row: KeeperRow & { copper: number } = oneOf(random, slipRows(log));
      const cell = written(row.copper);
      row.copper = typeof cell === 'number' ? round(cell, 4) : row.copper;
      if (typeof cell === 'string') (row as KeeperRow).copper = cell;
      return [row];
    },
  };
}

/** Rows with copper to speak of, raising ones among them. */
function slipRows(log: KeeperLog): readonly Tested[] {
  return log.rows.filter((row): row is Tested => isTested(row) && row.copper > 0.3 * log.low).slice(1);
}

/** Neighbouring digits changed over, where that moves the reading by more than a quarter of the aim. */
function swapsOf(level: number, { aim }: KeeperLog): number[] {
  const digits = level.toFixed(2).replace('.', '');
  const swaps: number[] = [];
  for (let at = 0; at + 1 < digits.length; at++) {
    const swapped = digits.slice(0, at) + digits.charAt(at + 1) + digits.charAt(at) + digits.slice(at + 2);
    const moved = Number(swapped) / 100;
    if (Math.abs(moved - level) > 0.25 * aim) swaps.push(moved);
  }
  return swaps;
}
