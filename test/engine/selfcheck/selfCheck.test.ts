import { references } from '../../../src/engine/references/references.js';
import { agreesAsPrinted } from '../../../src/engine/selfcheck/agreesAsPrinted.js';
import { publishedValues } from '../../../src/engine/selfcheck/publishedValues.js';
import { selfCheckOf } from '../../../src/engine/selfcheck/selfCheckOf.js';
import { selfCheckTable } from '../../../src/engine/text/selfCheckTable.js';

describe('agreesAsPrinted', () => {
  it.each<[number, string]>([
    [1.018054, '1.018'],
    [1.0185, '1.018'],
    [1.018, '1.018'],
    [41.667, '42'],
    [20, '20.0'],
    [-0.26232, '-0.2623'],
  ])('%d agrees with %s', (computed, printed) => {
    expect(agreesAsPrinted(computed, printed)).toBe(true);
  });

  it.each<[number | null, string]>([
    [1.01851, '1.018'],
    [20.06, '20.0'],
    [41.4, '42'],
    [30000, '30'],
    [null, '30'],
    [null, '0'],
    [NaN, '30'],
    [Infinity, '30'],
    [0, ''],
    [30, '30 mg'],
  ])('%d does not agree with %s', (computed, printed) => {
    expect(agreesAsPrinted(computed, printed)).toBe(false);
  });
});

describe('selfCheckOf', () => {
  it.each(publishedValues.map((value) => [value.check, value] as const))('agrees: %s', (_, value) => {
    expect(selfCheckOf(value)).toMatchObject({ agrees: true });
  });

  const exact = publishedValues.filter(({ within }) => within === undefined);
  it.each(exact.map((value) => [value.check, value] as const))('would see a wrong last place: %s', (_, value) => {
    const decimals = value.printed.split('.')[1]?.length ?? 0;
    for (const units of [-2, 2]) {
      const printed = (Number(value.printed) + units * 10 ** -decimals).toFixed(decimals);
      expect(selfCheckOf({ ...value, printed }).agrees).toBe(false);
    }
  });

  it('would see a value further off than the share said', () => {
    const near = publishedValues.filter(({ within }) => within !== undefined);
    expect(near.length).toBeGreaterThan(0);
    for (const value of near) {
      for (const sign of [-1, 1]) {
        const computed = () => Number(value.printed) * (1 + sign * 1.01 * (value.within ?? NaN));
        expect(selfCheckOf({ ...value, computed }).agrees).toBe(false);
      }
    }
  });

  it('would see a formula that answers otherwise, or not at all', () => {
    for (const value of publishedValues) {
      const wrong = Number(value.printed) * 1.01 + 1;
      expect(selfCheckOf({ ...value, computed: () => wrong }).agrees).toBe(false);
      expect(selfCheckOf({ ...value, computed: () => null }).agrees).toBe(false);
    }
  });

  it('computes anew each time', () => {
    const [value] = publishedValues;
    let calls = 0;
    const counted = { ...value!, computed: () => ++calls };
    selfCheckOf(counted);
    selfCheckOf(counted);
    expect(calls).toBe(2);
  });

  it('names every check once, and a known source', () => {
    expect(publishedValues.length).toBeGreaterThanOrEqual(28);
    expect(new Set(publishedValues.map(({ check }) => check)).size).toBe(publishedValues.length);
    for (const { source } of publishedValues) expect(references[source.key]).toBeDefined();
  });
});

describe('selfCheckTable', () => {
  const table = selfCheckTable();

  it('has a row for each published value', () => {
    expect(table.rows).toHaveLength(publishedValues.length);
  });

  it('holds numbers and truth values, and a status beside each source', () => {
    for (const [check, published, computed, agrees, source] of table.rows) {
      expect(typeof check).toBe('string');
      expect(Number.isFinite(published)).toBe(true);
      expect(Number.isFinite(computed)).toBe(true);
      expect(agrees).toBe(true);
      expect(source).toMatch(/\((seen|read in a copy|derived|from memory|common practice)\)$/);
    }
  });

  it('says that the thousandfold slip is one', () => {
    const row = table.rows.find(([check]) => /30 grams/.test(String(check)));
    expect(row?.slice(1, 4)).toEqual([30, 30, true]);
    expect(row?.[0]).toMatch(/misprint/);
  });

  it('shows a wrong value as it is', () => {
    const [value] = publishedValues;
    expect(selfCheckTable([{ ...value!, printed: '1' }]).rows[0]?.slice(1, 4)).toEqual([1, value!.computed(), false]);
    expect(selfCheckTable([{ ...value!, computed: () => null }]).rows[0]?.slice(2, 4)).toEqual(['', false]);
  });
});
