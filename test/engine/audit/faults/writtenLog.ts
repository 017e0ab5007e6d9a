import type { SeededNumbers } from '../../../../src/engine/level/seededNumbers.js';
import { isoFromSerial } from '../../../../src/base/isoFromSerial.js';
import { oneOf, round } from './faultlessLog.js';
import type { KeeperLog, KeeperRow } from './keeperLog.js';

type Cell = string | number | null;

/** A log as it stands in a sheet, and the row of the range that each of the keeper's rows became. */
export interface WrittenLog {
  readonly range: readonly (readonly Cell[])[];
  readonly card: readonly (readonly Cell[])[];
  readonly rowOf: ReadonlyMap<KeeperRow, number>;
}

interface Column {
  readonly headings: readonly string[];
  readonly cell: (row: KeeperRow) => Cell;
}

const usGallon = 3.785411784;

/** Writes a log in a keeper's own headings, units and spellings. */
export function writtenLog(log: KeeperLog, random: SeededNumbers): WrittenLog {
  const columns = columnsFor(log, random);
  const headings = columns.map((column) => oneOf(random, column.headings));
  const rows = random.uniform() < 0.15 ? [...log.rows].reverse() : log.rows;
  const range: Cell[][] = [];
  const rowOf = new Map<KeeperRow, number>();
  if (random.uniform() < 0.2) range.push(['Quarantine log', ...headings.slice(1).map(() => null)]);
  range.push(headings);
  const blanks = random.uniform() < 0.3;
  const repeats = random.uniform() < 0.1;
  rows.forEach((row, index) => {
    if (blanks && random.uniform() < 0.03) range.push(headings.map(() => null));
    if (repeats && index > 0 && index % 40 === 0) range.push(headings);
    range.push(columns.map(({ cell }) => cell(row)));
    rowOf.set(row, range.length);
  });
  if (random.uniform() < 0.1) range.push(['Total', ...headings.slice(1).map(() => null)]);
  return { range, card: writtenCard(log, random), rowOf };
}

function columnsFor(log: KeeperLog, random: SeededNumbers): readonly Column[] {
  const isUsed = (key: keyof KeeperRow): boolean => log.rows.some((row) => row[key] !== undefined);
  const number = (key: keyof KeeperRow, headings: readonly string[], convert = (x: number): Cell => x): Column[] =>
    isUsed(key)
      ? [{ headings, cell: (row) => (typeof row[key] === 'number' ? convert(row[key]) : (row[key] ?? null)) }]
      : [];
  const litresIn = (words: string): readonly [readonly string[], (x: number) => Cell] =>
    random.uniform() < 0.7
      ? [[`${words} (L)`, `${words} L`], (x) => x]
      : [[`${words} gal`, `${words} (gal)`], (x) => round(x / usGallon, 3)];
  const text = (key: 'note' | 'signs' | 'fishIn' | 'fishOut', headings: readonly string[]): Column[] =>
    isUsed(key) ? [{ headings, cell: (row) => row[key] ?? null }] : [];
  const rest = [
    ...number('dose', ['Dose (mL)', 'Dose', 'mL added', 'Meds ml'], doseCell(random)),
    ...number('change', ...litresIn(oneOf(random, ['WC', 'PWC', 'Water change']))),
    ...number('replacement', ['Replacement Cu', 'New water mg/L']),
    ...number('topOff', ...litresIn(oneOf(random, ['ATO', 'Top-off', 'Topped off']))),
    ...number('salinity', ['Salinity', 'Sal ppt']),
    ...number('temperature', ...temperatureIn(random)),
    ...number('pH', ['pH']),
    ...number('ammonia', ['Ammonia', 'NH3 mg/L', 'TAN']),
    ...number('holdDay', ['Hold day', 'Day #']),
    ...number('dead', ['Dead', 'Morts', 'Deaths']),
    ...text('fishIn', ['Fish in', 'New fish']),
    ...text('fishOut', ['Fish out', 'Moved']),
    ...text('signs', ['Signs', 'Observations', 'Behaviour']),
    ...text('note', ['Notes', 'Comments', 'Remarks']),
  ];
  const unknown: Column[] = random.uniform() < 0.2 ? [{ headings: ['Weather'], cell: () => null }] : [];
  return [...timeColumns(random), copperColumn(random), ...rest, ...unknown];
}

function timeColumns(random: SeededNumbers): readonly Column[] {
  const iso = (when: number): string => isoFromSerial(when).slice(0, 16);
  switch (Math.floor(random.uniform() * 4)) {
    case 0:
      return [{ headings: ['Date', 'When', 'Date and time'], cell: ({ when }) => when }];
    case 1:
      return [{ headings: ['When', 'Date / time'], cell: ({ when }) => iso(when) }];
    case 2:
      return [
        { headings: ['Date'], cell: ({ when }) => iso(when).slice(0, 10) },
        { headings: ['Time'], cell: ({ when }) => iso(when).slice(11) },
      ];
    default:
      return [
        { headings: ['Date'], cell: ({ when }) => Math.floor(when) },
        { headings: ['Time'], cell: ({ when }) => twelveHours(when) },
      ];
  }
}

function twelveHours(when: number): string {
  const [hour = 0, minute = 0] = isoFromSerial(when).slice(11, 16).split(':').map(Number);
  return `${((hour + 11) % 12) + 1}:${String(minute).padStart(2, '0')} ${hour < 12 ? 'AM' : 'PM'}`;
}

function copperColumn(random: SeededNumbers): Column {
  const style = Math.floor(random.uniform() * 5);
  const headings = ['Cu ppm', 'Copper', 'Copper mg/L', 'Reading', 'Cu', 'Test result'];
  const cell = ({ copper }: KeeperRow): Cell => {
    if (typeof copper !== 'number') return copper ?? null;
    if (style === 0) return `${copper} ppm`;
    if (style === 1) return String(copper).replace('.', ',');
    if (style === 2) return copper.toFixed(2);
    return copper;
  };
  return { headings, cell };
}

function doseCell(random: SeededNumbers): (x: number) => Cell {
  return random.uniform() < 0.25 ? (x) => `${x} mL` : (x) => x;
}

function temperatureIn(random: SeededNumbers): readonly [readonly string[], (x: number) => Cell] {
  return random.uniform() < 0.5 ? [['Temp C', 'Temp (C)'], (x) => x] : [['Temp F'], (x) => round(x * 1.8 + 32, 1)];
}

const cardNames: Readonly<Record<string, readonly string[]>> = {
  volume: ['Volume', 'Net volume', 'Vol'],
  form: ['Form', 'Copper form', 'Band'],
  strength: ['Strength', 'Stock strength'],
  'meter accuracy': ['Meter accuracy', 'Accuracy'],
};

function writtenCard({ card }: KeeperLog, random: SeededNumbers): Cell[][] {
  return [...card].map(([name, value]) => [oneOf(random, cardNames[name] ?? [name]), value]);
}
