import { cardCells, cardEntries } from '../../../../src/engine/log/cardRead/cardEntries.js';
import { readCard } from '../../../../src/engine/log/cardRead/readCard.js';
import { cardTable } from '../../../../src/engine/text/cardTable.js';
import type { Cell } from '../../../../src/engine/units/cell.js';

const cellOf = (raw: unknown): Cell => (raw === undefined ? null : (raw as Cell));
const needed: [Cell, Cell][] = [
  ['Volume', 200],
  ['Form', 'chelated'],
];

function cardOf(...rows: [Cell, Cell][]) {
  const entries = cardEntries(rows, cellOf);
  return entries.ok ? readCard(cardCells(entries.value)) : entries;
}
const valueOf = (...rows: [Cell, Cell][]) => {
  const card = cardOf(...rows);
  if (!card.ok) throw new Error(JSON.stringify(card.problem));
  return card.value;
};

describe('readCard', () => {
  it('needs a volume and a form or band, and has defaults for the rest', () => {
    expect(valueOf(...needed)).toMatchObject({
      volume: 200,
      form: 'chelated',
      band: { low: 1.95, high: 2.55, inner: { low: 2, high: 2.5 } },
      aim: 2.25,
      strength: null,
      days: 30,
      longestGap: 4,
      pace: 'gradual',
      confirm: 1,
      newcomers: 'count on',
      gallon: 'US',
      fish: [],
    });
    expect(cardOf(['Form', 'amine'])).toMatchObject({ problem: { code: 'card-without', name: 'volume' } });
    expect(cardOf(['Volume', 200])).toMatchObject({ problem: { code: 'card-without', name: 'form or band' } });
  });

  it.each<[Cell, Cell, object]>([
    ['Volume (gal)', 20, { volume: 20 * 3.785411784 }],
    ['Volume gal', '20', { volume: 20 * 3.785411784 }],
    ['Net volume', '20 gal', { volume: 20 * 3.785411784 }],
    ['Longest gap', 'none', { longestGap: Infinity }],
    ['Longest gap (days)', 3, { longestGap: 3 }],
    ['Longest gap', '48 h', { longestGap: 2 }],
    ['Meter accuracy', 0.1, { meterAccuracy: 0.1 }],
    ['Meter percent', '5%', { meterPercent: 0.05 }],
    ['Meter from', '210 ug/L', { meterFrom: 0.21 }],
    ['Reads', 'Total', { reads: 'total' }],
    ['Days', 14, { days: 14 }],
    ['Pace', 'urgent', { pace: 'urgent' }],
    ['Pace', 6, { pace: 6 }],
    ['Fish', 'yellow tang, 2 clownfish; gramma', { fish: ['yellow tang', '2 clownfish', 'gramma'] }],
    ['Arrived', '2026-03-01', { arrived: 46082 }],
    ['Start', 46082.5, { start: 46082.5 }],
    ['Temperature F', 77, { temperature: 25 }],
    ['Disease', 'velvet', { disease: 'velvet', newcomers: 'restart' }],
    ['Confirm', 2, { confirm: 2 }],
    ['Newcomers', 'restart', { newcomers: 'restart' }],
    ['Weather', 'rain', {}],
    ['Meter to', '5 ppm', { meterTo: 5, meterAccuracy: null }],
    ['Smallest', 0.5, { smallest: 0.5 }],
    ['Smallest dose (mL)', '0.2 mL', { smallest: 0.2 }],
    ['Doses a day', 1, { dosesADay: 1, days: 30 }],
    ['Doses per day', '3', { dosesADay: 3, days: 30 }],
    ['Tests a day', 2, { days: 30 }],
    ['Moved in', '2026-03-01', { movedIn: 46082 }],
    ['Accept copper for', 'mandarin; lionfish', { acceptCopperFor: ['mandarin', 'lionfish'], form: 'chelated' }],
    ['Shares water with', 'B, C', { sharesWaterWith: ['B', 'C'] }],
    ['Bottle mL', 500, { bottle: 500, volume: 200 }],
    ['Bottle (mL)', '0.5 L', { bottle: 500 }],
    ['Bottle price', '€ 24.50', { bottlePrice: 24.5, bottle: null }],
    ['Tests left', 40, { testsLeft: 40 }],
    ['Test price', 1.2, { testPrice: 1.2 }],
  ])('reads %j %j', (name, value, expected) => {
    const rows = needed.filter(([known]) => String(known) !== 'Volume' || !/volume/i.test(String(name)));
    const card = valueOf(...rows, [name, value]);
    for (const [key, wanted] of Object.entries(expected)) {
      const got = card[key as keyof typeof card];
      if (typeof wanted === 'number' && Number.isFinite(wanted)) expect(got).toBeCloseTo(wanted, 9);
      else expect(got).toEqual(wanted);
    }
  });

  it('takes a salinity near 1 for a specific gravity', () => {
    expect(valueOf(...needed, ['Salinity', 1.0264]).salinity).toBeCloseTo(35, 0);
    expect(valueOf(...needed, ['SG', '1.0264 SG']).salinity).toBeCloseTo(35, 0);
    expect(valueOf(...needed, ['Salinity', 35]).salinity).toBe(35);
  });

  it('takes the imperial gallon where the card says so', () => {
    expect(valueOf(['Gallon', 'imperial'], ['Volume (gal)', 20], ['Form', 'amine']).volume).toBeCloseTo(90.9218, 6);
  });

  it('takes a band in one cell', () => {
    expect(valueOf(['Volume', 200], ['Band', '1.9-2.4']).band).toEqual({ low: 1.9, high: 2.4 });
    expect(valueOf(['Volume', 200], ['Band', 1.9]).band).toEqual({ low: 1.9, high: Infinity });
  });

  it.each<[Cell, Cell, object]>([
    ['Volume (mg/L)', 20, { code: 'heading-unit' }],
    ['Volume (buckets)', 20, { code: 'heading-unit', unit: 'buckets' }],
    ['Volume', 'a lot', { code: 'card-twice' }],
    ['Days', 'purple', { code: 'not-a-value', at: { field: 'card days' } }],
    ['Aim', 25, { code: 'out-of-limits' }],
    ['Confirm', 3, { code: 'not-a-choice', field: 'card confirm' }],
    ['Doses a day', 2.5, { code: 'not-whole', field: 'card doses a day' }],
    ['Bottle mL', 'two', { code: 'not-a-value', at: { field: 'card bottle mL' } }],
    ['Form', 'ionic', { code: 'card-twice' }],
  ])('refuses %j %j', (name, value, problem) => {
    expect(cardOf(...needed, [name, value])).toMatchObject({ ok: false, problem });
  });

  it('leaves out a heading row and shows how each row was read', () => {
    const entries = cardEntries(
      [['Name', 'Value'], ...needed, ['Tank colour', 'blue'], ['Strength', ''], ['Bottle mL', '1 L']],
      cellOf,
    );
    if (!entries.ok) throw new Error(JSON.stringify(entries.problem));
    const card = readCard(cardCells(entries.value));
    if (!card.ok) throw new Error(JSON.stringify(card.problem));
    expect(cardTable(entries.value, card.value).rows).toEqual([
      ['Volume', 200, 'L', 'volume'],
      ['Form', 'chelated', '', 'form or band'],
      ['Tank colour', 'blue', '', 'unknown'],
      ['Strength', '', '', 'strength'],
      ['Bottle mL', 1000, 'mL', 'bottle mL'],
    ]);
  });
});
