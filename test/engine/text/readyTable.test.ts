import { readyGates } from '../../../src/engine/audit/readyGates.js';
import { readyTable } from '../../../src/engine/text/readyTable.js';
import { treatmentFrom } from '../rules/treatmentFrom.js';

const card = 'volume | 200 L\nform | chelated\ndays | 3';
const log = `Date | Copper | Dead | Signs | Note
2026-03-01 08:00 | 2.25 | | eating |
2026-03-02 08:00 | 2.25 | | |
2026-03-03 08:00 | 2.25 | | |
2026-03-04 08:00 | 2.25 | | eating |
2026-03-05 08:00 | 0.01 | | | praziquantel
2026-03-08 08:00 | 0.01 | | |
2026-03-13 08:00 | 0.01 | | eating | praziquantel
2026-03-20 08:00 | 0.01 | | eating |
2026-03-28 08:00 | 0.01 | | eating |`;
const table = (asOf: string, text = log) => readyTable(readyGates(treatmentFrom(text, card, asOf)));

describe('readyTable', () => {
  it('ends with the verdict and its reason', () => {
    const { rows } = table('2026-03-28 09:00');
    expect(rows).toHaveLength(9);
    expect(rows[8]?.slice(0, 3)).toEqual(['release', '', '']);
    expect(table('2026-03-06 09:00').rows[8]?.[0]).toBe('not yet');
    expect(table('2026-03-06 09:00', log.replace('0.01 | | | praz', '0.01 | 2 | | praz')).rows[8]?.[0]).toBe(
      'a vet decides',
    );
  });

  it('has numbers or nothing under Since', () => {
    for (const when of ['2026-03-01 09:00', '2026-03-06 09:00', '2026-03-28 09:00']) {
      for (const [, , since] of table(when).rows) expect(since === '' || typeof since === 'number').toBe(true);
    }
  });

  it('says why in plain words, and promises nothing', () => {
    const all = [
      '2026-03-01 09:00',
      '2026-03-03 09:00',
      '2026-03-06 09:00',
      '2026-03-14 09:00',
      '2026-03-28 09:00',
    ].flatMap((when) => table(when).rows.map((row) => String(row[3])));
    for (const why of all) {
      expect(why).not.toBe('');
      expect(why).not.toMatch(/\b(?:safe\w*|clean\w*|cured?|undefined|NaN|Infinity)\b/i);
      expect(why.length).toBeLessThanOrEqual(240);
    }
    expect(all).toContain(
      '2.04 of 3 days held; would be reached on 2026-03-04 08:00, if a test then or later is still in the band',
    );
    expect(all).toContain('the longest stretch between tests is 24 h, the limit is 48 h');
    expect(all).toContain('praziquantel on 2026-03-05 08:00 and 2026-03-13 08:00');
  });
});
