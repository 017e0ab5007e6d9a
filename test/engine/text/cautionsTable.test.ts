import { cautionsTable } from '../../../src/engine/text/cautions.js';

describe('cautionsTable', () => {
  const { rows } = cautionsTable();
  const text = rows.map(([caution]) => String(caution)).join('\n');

  it('has one caution a row', () => {
    expect(rows.length).toBeGreaterThanOrEqual(12);
    expect(new Set(rows.map(([caution]) => caution)).size).toBe(rows.length);
    for (const row of rows) {
      expect(row).toHaveLength(1);
      expect(Number(row[0])).toBeNaN();
    }
  });

  it.each([
    /harmful if swallowed, serious eye damage, very toxic to aquatic life.*ICSC 1416/i,
    /gloves and goggles/i,
    /children.*food/i,
    /invertebrates/i,
    /fish meant for eating/i,
    /inside the .*band/i,
    /test.*before the next/i,
    /ammonia binders/i,
    /sea, stream or storm drain/i,
    /40 CFR 131\.38/,
    /4\.8 µg\/L/,
    /42 times/,
    /1\.3 mg\/L.*never a discharge limit/i,
    /local rules/i,
    /prescription/i,
    /aquatic veterinarian decides/i,
    /local law and the label come/i,
  ])('says %s', (words) => {
    expect(text).toMatch(words);
  });

  it('never promises', () => {
    expect(text).not.toMatch(/\b(safe|safely|safety|clean|cured|harmless)\b/i);
  });
});
