import { plotWords } from '../../../src/app/plot/plotWords.js';
import { plotCases } from './plotCases.js';

const cases = plotCases();
const words = (name: string) => plotWords(cases[name]!);

describe('plotWords', () => {
  it('tells the past treatment in full', () => {
    expect(words('past')).toBe(
      'From 2026-01-04 to 2026-02-14 there are 44 readings, the lowest <0.05 mg/L on 2026-01-04 18:30, the highest ' +
        '2.31 mg/L on 2026-01-30 08:00: 14 below, 30 in and 0 above the band of 1.95 to 2.55 mg/L. There are 2 holds, ' +
        'the longest of 24.5 days; none lasted the 30 days wanted. A break on 2026-01-13 20:00 (a reading below); ' +
        '1 stretch of a hold went without a test for over 36 h, the longest 86 h. Logged: 14 doses of copper, 9 water changes, ' +
        'at least 3 fish died.',
    );
  });

  it('tells a running hold, one reading, none, and a band without a top', () => {
    expect(words('A2')).toContain('none lasted the 30 days wanted, and one has been running since 2026-05-02 19:40.');
    expect(words('one reading')).toContain('there is one reading, 2.2 mg/L on');
    expect(words('one reading')).toContain('There is one hold, of 0.0 days; none lasted');
    expect(words('no reading')).toBe(
      'No reading was logged; the therapeutic band is 1.95 to 2.55 mg/L. No hold began; 30 days are wanted. Logged: 1 dose of copper.',
    );
    expect(words('no top')).toContain('the band from 1.5 mg/L up');
  });

  it('tells the first of many breaks, and how many more', () => {
    expect(words('broken often')).toMatch(/24 breaks on .* and 21 more\./);
  });

  it('is two to five sentences for every plot', () => {
    for (const name of Object.keys(cases)) {
      const sentences = words(name).split(/(?<=\.) (?=[A-Z1-9])/);
      expect([name, sentences.length >= 2 && sentences.length <= 5]).toEqual([name, true]);
    }
  });
});
