import type { StandInHost } from '../host/standInHost.js';
import { barePass, type Bench } from './benches.js';

type Cell = number | string | null;

const headings = ['System', 'When', 'Cu ppm', 'Dose mL', 'WC L', 'Top-off L', 'Eating?', 'Notes', 'Salinity', 'Temp C'];
const rowsPerSystem = 333;

/** A keeper's log of one system in the hold, two tests a day, as quiet as a log can be. */
function keeperLog(rows: number): Cell[][] {
  return [headings, ...Array.from({ length: rows }, (_, at) => row('Quay 1', at, at))];
}

/** A shop's log, its systems in turn. */
function shopLog(rows: number): Cell[][] {
  const systems = Math.max(1, Math.floor(rows / rowsPerSystem));
  const rowAt = (_: unknown, at: number): Cell[] => row(`Quay ${(at % systems) + 1}`, Math.floor(at / systems), at);
  return [headings, ...Array.from({ length: rows }, rowAt)];
}

function row(system: string, at: number, seed: number): Cell[] {
  const change = at % 14 === 0 ? 20 : null;
  const note = change === null ? (at % 9 === 0 ? 'filter rinsed' : null) : 'premixed';
  const copper = 2.2 + ((seed * 7919) % 11) / 100;
  return [
    system,
    46000.3 + at / 2,
    copper,
    null,
    change,
    at % 3 === 0 ? 2 : null,
    at % 6 === 0 ? 'yes' : null,
    note,
    at % 7 === 0 ? 34.5 : null,
    25,
  ];
}

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
