import type { StandInHost } from '../host/standInHost.js';
import { barePass, type Bench } from './benches.js';

type Cell = number | string | null;

const headings = ['System', 'When', 'Cu ppm', 'Dose mL', 'WC L', 'Top-off L', 'Eating?', 'Notes', 'Salinity', 'Temp C'];
const rowsPerSystem = 333;

/** A keeper's log of one system in the hold, two tests a day: what is lost is dosed, what evaporates is topped off. */
export function keeperLog(rows: number): Cell[][] {
  let level = 2.25;
  const rowAt = (_: unknown, at: number): Cell[] => {
    level *= Math.exp(-lossPerDay / 2);
    const error = 0.08 * (spread(at, 1) + spread(at, 2) - 1);
    const dose = at % 6 === 0 && level < 2.25 ? Math.round((2.25 - level) * 200) / 10 : null;
    const copper = Math.round((level + error) * 100) / 100;
    level += ((dose ?? 0) * 10) / 200;
    return row('Quay 1', at, { copper, dose });
  };
  return [headings, ...Array.from({ length: rows }, rowAt)];
}

const lossPerDay = 0.015;

/** A number from 0 to 1 that looks like chance, the same in every run. */
function spread(at: number, stream: number): number {
  return ((at * 7919 + stream * 104_729) % 1009) / 1009;
}

/** A shop's log, its systems in turn. */
function shopLog(rows: number): Cell[][] {
  const systems = Math.max(1, Math.floor(rows / rowsPerSystem));
  const rowAt = (_: unknown, at: number): Cell[] =>
    row(`Quay ${(at % systems) + 1}`, Math.floor(at / systems), { copper: 2.2 + ((at * 7919) % 11) / 100, dose: null });
  return [headings, ...Array.from({ length: rows }, rowAt)];
}

function row(system: string, at: number, { copper, dose }: { copper: number; dose: number | null }): Cell[] {
  const isChange = at % 14 === 3;
  const topOff = Math.round((1.5 + spread(at, 4)) * 10) / 10;
  return [
    system,
    46000.3 + at / 2 + spread(at, 3) / 24,
    copper,
    dose,
    isChange ? 20 : null,
    at % 3 === 0 ? topOff : null,
    at % 6 === 0 ? (signs[at % 5] ?? 'yes') : null,
    isChange ? 'premixed' : at % 9 === 0 ? (notes[at % 4] ?? null) : null,
    at % 7 === 0 ? 34 + Math.round(spread(at, 5) * 10) / 10 : null,
    24.5 + Math.round(spread(at, 6) * 10) / 10,
  ];
}

const signs = ['yes', 'eating well', 'all eating, no spots', 'active and eating', 'yes'];
const notes = ['filter rinsed', 'lights off early, all well', 'pump cleaned; new airstone', 'probe wiped'];

const card: Cell[][] = [
  ['Volume', 200],
  ['Form', 'chelated'],
  ['Strength', 10],
  ['Meter accuracy', 0.15],
];

function shopCards(rows: number): Cell[][] {
  const systems = Math.max(1, Math.floor(rows / rowsPerSystem));
  const cards = Array.from({ length: systems }, (_, at): Cell[] => [`quay ${at + 1}`, 200, 'chelated', 10]);
  return [['System', 'Volume', 'Form', 'Strength'], ...cards];
}

/** AUDIT of a log against a bare pass over its cells; SYSTEMS against itself at a tenth of the rows. */
export function logBenches(host: StandInHost, rows: number): Bench[] {
  const tenth = Math.ceil(rows / 10);
  const systems = (count: number) => {
    const [log, cards] = [shopLog(count), shopCards(count)];
    return () => host.callBare('SYSTEMS', log, cards, 46000.3 + rowsPerSystem / 2);
  };
  return [
    {
      name: `AUDIT, ${tenth} rows`,
      limit: 60,
      measuring: { runs: 41, warmUps: 40, collects: false },
      prepare: () => {
        const log = keeperLog(tenth);
        return {
          run: () => host.callBare('AUDIT', log, card),
          baseline: () => barePass([log]),
          holds: (answer) => Array.isArray(answer) && String((answer as Cell[][])[1]?.[3]).startsWith('complete'),
        };
      },
    },
    {
      name: 'NOTES, a cell of 32,000 characters to 8,000',
      limit: 8,
      prepare: () => {
        let call = 0;
        // A text is read once and remembered: each call has one of its own.
        const notes = (length: number) => () =>
          host.callBare('NOTES', [
            ['When', 'Cu', 'Note'],
            [46000.3, 2.2, `${++call} ${'no two yellow, carbon in '.repeat(length / 25)}`],
          ]);
        return {
          run: notes(32_000),
          baseline: notes(8_000),
          holds: (answer) => Array.isArray(answer) && answer.length === 2,
        };
      },
    },
    {
      name: `SYSTEMS, ${rows} rows to ${tenth}`,
      limit: 12,
      prepare: () => ({
        run: systems(rows),
        baseline: systems(tenth),
        holds: (answer) => Array.isArray(answer) && answer.length === Math.max(1, Math.floor(rows / rowsPerSystem)) + 1,
      }),
    },
  ];
}
