import { standInHost } from '../host/standInHost.js';

const host = standInHost();

describe('SELFCHECK', () => {
  it('finds that the bundle agrees with every published value', () => {
    const [heading, ...rows] = host.call('SELFCHECK') as (string | number | boolean)[][];
    expect(heading).toEqual(['Check', 'Published', 'Computed', 'Agrees', 'Source']);
    expect(rows.length).toBeGreaterThan(30);
    expect(rows.filter((row) => row[3] !== true)).toEqual([]);
    expect(rows.every((row) => String(row[4]).length > 10)).toBe(true);
  });
});

describe('CAUTIONS', () => {
  it('lists what must be known, a row each', () => {
    const [heading, ...rows] = host.call('CAUTIONS') as string[][];
    expect(heading).toEqual(['Caution']);
    const text = rows.flat().join('\n');
    for (const words of ['poison', 'gloves', 'invertebrates', 'fish meant for eating', 'veterinarian', 'storm drain']) {
      expect(text).toContain(words);
    }
    expect(text).not.toMatch(/\bsafe\b/i);
  });
});
