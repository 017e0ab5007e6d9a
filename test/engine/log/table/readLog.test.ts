import { readLog } from '../../../../src/engine/log/table/readLog.js';
import { copperStates, type Log } from '../../../../src/engine/log/table/log.js';
import type { ColumnKind } from '../../../../src/engine/log/headings/columnKinds.js';
import { readHeadings } from '../../../../src/engine/log/headings/readHeadings.js';
import { message } from '../../../../src/engine/text/message.js';
import type { Cell } from '../../../../src/engine/units/cell.js';

const cellOf = (raw: unknown): Cell => (raw === undefined ? null : (raw as Cell));

function logOf(range: unknown[][], gallon: 'US' | 'imperial' = 'US'): Log {
  const log = readLog({ log: { range, firstRow: 1, cellOf }, gallon, needs: ['time', 'copper'] });
  if (!log.ok) throw new Error(JSON.stringify(log.problem));
  return log.value;
}

describe('readHeadings', () => {
  const kinds = (...texts: string[]) => {
    const read = readHeadings(texts, () => true);
    return read.ok ? read.value.map(({ words, unit }) => [words?.kind ?? null, unit]) : read.problem;
  };

  it.each<[string, ColumnKind | null, string | null]>([
    ['Cu ppm', 'copper', 'ppm'],
    ['Copper (mg/L)', 'copper', 'mg/l'],
    ['Cu (µg/L)', 'copper', 'ug/l'],
    ['Reading', 'copper', null],
    ['Lvl mg/L', 'copper', 'mg/l'],
    ['Timestamp', 'time', null],
    ['Chg L', 'change', 'l'],
    ['Health', 'signs', null],
    ['sx', 'signs', null],
    ['Memo', 'note', null],
    ['Fish removed', 'fish out', null],
    ['Added', 'dose', null],
    ['ml', 'dose', 'ml'],
    ['Copper solution (ml)', 'dose', 'ml'],
    ['Oxygen mg/L', 'oxygen', 'mg/l'],
    ['O2', 'oxygen', null],
    ['Nitrite (ppm)', 'nitrite', 'ppm'],
    ['Flukes', 'flukes', null],
    ['WC gal', 'change', 'gal'],
    ['WC imp gal', 'change', 'impgal'],
    ['Water change %', 'change', '%'],
    ['PWC (L)', 'change', 'l'],
    ['Dose ml', 'dose', 'ml'],
    ['Meds', 'dose', null],
    ['mL added', 'dose', 'ml'],
    ['Time', 'time', null],
    ['Date', 'time', null],
    ['When tested', 'time', null],
    ['Eating?', 'signs', null],
    ['Observations', 'signs', null],
    ['Symptoms', 'signs', null],
    ['ATO', 'top-off', null],
    ['Top-off L', 'top-off', 'l'],
    ['Replacement Cu', 'replacement', null],
    ['Fish in', 'fish in', null],
    ['Fish out', 'fish out', null],
    ['DOA', 'dead', null],
    ['Morts', 'dead', null],
    ['Comments', 'note', null],
    ['Tank', 'system', null],
    ['Rack', 'system', null],
    ['Batch', 'lot', null],
    ['Initials', 'who', null],
    ['Tested by', 'who', null],
    ['SG', 'salinity', 'sg'],
    ['Sal (ppt)', 'salinity', 'ppt'],
    ['Temp F', 'temperature', 'f'],
    ['Temp (C)', 'temperature', 'c'],
    ['pH', 'pH', null],
    ['NH3', 'ammonia', null],
    ['TAN mg/L', 'ammonia', 'mg/l'],
    ['Volume (L)', 'volume', 'l'],
    ['Hold day', 'hold day', null],
    ['Weather', null, null],
    ['', null, null],
  ])('reads %j as %s in %s', (text, kind, unit) => {
    expect(kinds(text)).toEqual([[kind, unit]]);
  });

  it('refuses two headings for one thing with both, but not a date and its time of day', () => {
    expect(kinds('Cu', 'Copper (ppm)')).toEqual({
      code: 'two-headings',
      kind: 'copper',
      first: '"Cu"',
      second: '"Copper (ppm)"',
    });
    expect(kinds('Date', 'When')).toMatchObject({ code: 'two-headings', kind: 'time' });
    expect(kinds('Date', 'Time')).toEqual([
      ['time', null],
      ['time', null],
    ]);
    expect(kinds('Eating?', 'Observations')).toHaveLength(2);
  });

  it('refuses a unit that does not fit', () => {
    expect(kinds('Dose (mg/L)')).toMatchObject({ code: 'heading-unit', unit: 'mg/l', kind: 'dose' });
    expect(kinds('Copper (mL)')).toMatchObject({ code: 'heading-unit', kind: 'copper' });
    expect(kinds('Dose (drops)')).toMatchObject({ code: 'heading-unit', unit: 'drops' });
    expect(kinds('WC buckets')).toMatchObject({ code: 'heading-unit', unit: 'buckets' });
  });
});

describe('readLog', () => {
  const messy = [
    ['Reef cellar, system A', null, null, null, null, null, null],
    ['Date', 'Time', 'Cu ppm', 'WC gal', 'Dose ml', 'Eating?', 'Observations'],
    [46082, '0900', 1.2, null, '24 cc', 'yes', null],
    [null, '9:30 PM', '2,1', null, null, 'n', 'tang hides'],
    [null, null, null, null, null, null, null],
    ['Date', 'Time', 'Cu ppm', 'WC gal', 'Dose ml', 'Eating?', 'Observations'],
    [46083, '16.00', 'void 1.62', 10, '12ml', null, null],
    ['2026-03-04', 0.5, '~2.2', '25%', 0, 'Y', null],
    ['Total', null, null, 10, 36, null, null],
    [46084, 0.25, 'LOW', null, null, null, null],
  ];

  it('reads a messy log, every row an entry, a fault or rightly left out', () => {
    const log = logOf(messy);
    expect([...log.row]).toEqual([3, 4, 7, 10, 8]);
    expect([...log.when].map((when) => Math.round(when * 1440) / 1440)).toEqual(
      [46082.375, 46082 + 21.5 / 24, 46083 + 16 / 24, 46084.25, 46085.5].map((when) => Math.round(when * 1440) / 1440),
    );
    expect([...log.low]).toEqual([1.2, 2.1, NaN, NaN, 2.2]);
    expect(log.copper[2]).toBe(copperStates.void);
    expect([...(log.numbers.dose ?? [])]).toEqual([24, NaN, 12, NaN, 0]);
    expect(log.numbers.change?.[2]).toBeCloseTo(37.85411784, 8);
    expect(log.changeShare?.[4]).toBe(0.25);
    expect(log.texts.signs).toEqual(['eating', 'not eating; tang hides', '', '', 'eating']);
    expect(log.faults).toMatchObject([{ row: 10, kind: 'copper', problem: { code: 'not-a-reading' } }]);
  });

  it('reads gallons as the card says', () => {
    expect(logOf(messy, 'imperial').numbers.change?.[2]).toBeCloseTo(45.4609, 8);
    const written = [
      ['When', 'Cu', 'WC'],
      [46082, 2, '10 gal'],
    ];
    expect(logOf(written, 'imperial').numbers.change?.[0]).toBeCloseTo(45.4609, 8);
  });

  it('uses the unit of a heading for bare numbers and lets a cell say its own', () => {
    const log = logOf([
      ['When', 'Cu ug/L', 'Temp F', 'SG'],
      [46082, 180, 77, 1.0264],
      [46083, '0.2 mg/L', '25 C', '35 ppt'],
    ]);
    expect([...log.low]).toEqual([0.18, 0.2]);
    expect([...(log.numbers.temperature ?? [])]).toEqual([25, 25]);
    expect(log.numbers.salinity?.[0]).toBeCloseTo(35, 0);
    expect(log.numbers.salinity?.[1]).toBe(35);
  });

  it('finds a row without any date, and a bare share of a change', () => {
    const log = logOf([
      ['When', 'Cu', 'WC'],
      [null, 2.1, null],
      [46082, 2, 0.25],
    ]);
    expect(log.faults).toMatchObject([
      { row: 2, kind: 'time', problem: { code: 'row-without-time' } },
      { row: 3, kind: 'change', problem: { code: 'share-of-volume' } },
    ]);
  });

  it('calls rows what they are called where the range stands: entries, faults and sentences', () => {
    const range = [
      ['When', 'Cu', 'WC', 'Note', 'Temp'],
      [46084, 2.2, null, 'later', 25],
      [46082, 0, 0.25, 'first', null],
      ['yesterday', 2.3, null, '', null],
      [46083, 'LOW', '10 L', { error: '#N/A' }, 'warm'],
    ];
    const read = (firstRow: number): Log => {
      const log = readLog({ log: { range, firstRow, cellOf }, gallon: 'US', needs: ['time', 'copper'] });
      if (!log.ok) throw new Error(JSON.stringify(log.problem));
      return log.value;
    };
    const { row, zeroRows, faults, ...rest } = read(1);
    const lower = read(8);
    expect([...row]).toEqual([3, 5, 2]);
    expect([...lower.row]).toEqual([10, 12, 9]);
    expect([zeroRows, lower.zeroRows]).toEqual([[3], [10]]);
    expect(faults.map((fault) => fault.row)).toEqual([3, 4, 5, 5, 5]);
    expect(lower.faults.map((fault) => fault.row)).toEqual([10, 11, 12, 12, 12]);
    expect(lower.faults.map(({ problem }) => message(problem))).toEqual(
      faults.map(({ problem }) => message(problem).replace(/\brow (\d+)/i, (_, at) => `row ${Number(at) + 7}`)),
    );
    expect({ ...lower, row, zeroRows, faults }).toEqual({ ...rest, row, zeroRows, faults });
  });

  it('looks below a bare "Added": amounts are doses, names are fish that came in', () => {
    const heading = ['When', 'Cu', 'Added'];
    const dosed = logOf([heading, [46082, 1, 12.5], [46083, 1.5, '10 mL'], [46084, 2, null]]);
    expect([...(dosed.numbers.dose ?? [])]).toEqual([12.5, 10, NaN]);
    expect(dosed.texts['fish in']).toBeNull();
    const fish = logOf([heading, [46082, 1, '2 clownfish'], [46083, 1.5, null]]);
    expect(fish.texts['fish in']).toEqual(['2 clownfish', '']);
    expect(fish.numbers.dose).toBeNull();
  });

  it('knows which columns say something under a heading nobody knows', () => {
    const log = logOf([
      ['When', 'Cu', 'Moon', 'Spare', ''],
      [46082, 1, 'full', '', null],
      [46083, 1, null, null, 'x'],
    ]);
    expect(log.unread.map(({ text, column }) => [text, column])).toEqual([
      ['Moon', 2],
      ['', 4],
    ]);
  });

  it('reads a comma that cannot be one of thousands as a decimal one', () => {
    const heading = ['When', 'Cu', 'Salinity', 'NH3'];
    const log = logOf([heading, [46082, '0,185', '1,025', '0,125 ppm'], [46083, '1,250', '35,5', '1,025']]);
    expect([...log.low]).toEqual([0.185, NaN]);
    expect(log.numbers.salinity?.[0]).toBeCloseTo(33.1, 0);
    expect(log.numbers.salinity?.[1]).toBe(35.5);
    expect([...(log.numbers.ammonia ?? [])]).toEqual([0.125, NaN]);
    expect(log.faults.map(({ row, kind }) => [row, kind])).toEqual([
      [3, 'copper'],
      [3, 'ammonia'],
    ]);
  });

  it('says which heading is missing', () => {
    const range = [
      ['When', 'Weather'],
      [46082, 'rain'],
    ];
    expect(readLog({ log: { range, firstRow: 1, cellOf }, gallon: 'US', needs: ['time', 'copper'] })).toMatchObject({
      problem: { code: 'missing-heading', kind: 'copper' },
    });
  });
});
