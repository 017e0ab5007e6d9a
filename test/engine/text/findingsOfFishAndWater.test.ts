import type { Finding, FindingAt } from '../../../src/engine/rules/finding.js';
import { findingText } from '../../../src/engine/text/findingText.js';

const at = { severity: 'danger', when: 46082, row: 3, source: 'Practice' } as const;
type Body<F> = F extends Finding ? Omit<F, keyof FindingAt> : never;
const said = (body: Body<Finding>): string => findingText({ ...at, ...body }).finding;

const bodies: readonly Body<Finding>[] = [
  { code: 'conditioner-noted', words: 'water conditioner' },
  { code: 'low-salinity', salinity: 24.5, limit: 25, ofCard: false },
  { code: 'low-salinity', salinity: 18, limit: 20, ofCard: true },
  { code: 'low-salinity-treatment', words: 'hyposalinity' },
  { code: 'copper-intolerant-fish', fish: 'mandarin', listedAs: 'Mandarin', advice: 'avoid', reason: 'dragonet' },
  { code: 'copper-intolerant-fish', fish: 'shrimp', listedAs: 'Shrimps', advice: 'never', reason: 'invertebrate' },
  { code: 'deaths', count: 3, hours: 0, lot: '', lots: 1, of: null },
  { code: 'deaths', count: 2, hours: 12, lot: 'A', lots: 1, of: 18 },
  { code: 'deaths', count: 3, hours: 24, lot: 'A', lots: 2, of: null },
  { code: 'death-noted', count: 1, onArrival: 0, lot: '' },
  { code: 'death-noted', count: 2, onArrival: 2, lot: 'A' },
  { code: 'first-signs', text: 'not eating' },
  { code: 'second-signs', text: 'flashing', first: { row: 2, when: 46080 } },
  { code: 'second-signs', text: 'flashing', first: null },
  { code: 'unionised-ammonia', free: 0.1074, total: { written: 2.5, as: 'NH3' }, limit: 0.1 },
  { code: 'unionised-ammonia', free: 0.03, total: null, limit: 0.02 },
  { code: 'ammonia-outside-range', total: 1, field: 'pH', given: 7.2, min: 7.5, max: 8.5 },
  { code: 'ammonia-not-judged', total: 1, missing: ['pH', 'temperature', 'salinity'] },
  { code: 'liquid-ammonia-test', total: 0.25 },
  { code: 'liquid-ammonia-test', total: null },
];

describe('fishAndWaterFindings', () => {
  it.each(bodies)('puts $code into a sentence and a reason, and promises nothing', (body) => {
    const { finding, why } = findingText({ ...at, ...body });
    for (const text of [finding, why]) {
      expect(text).toMatch(/^["A-Z0-9a-z].*\.$/s);
      expect(text).not.toMatch(/\b(?:safe\w*|clean\w*|cured?|undefined|null|NaN|Infinity)\b/i);
      expect(text.length).toBeLessThanOrEqual(260);
    }
  });

  it('repeats the numbers of the row', () => {
    expect(said({ code: 'unionised-ammonia', free: 0.1074, total: { written: 2.5, as: 'NH3' }, limit: 0.1 })).toContain(
      '0.107 mg/L NH3, from 2.5 mg/L total (as NH3), 0.10 or more',
    );
    expect(said({ code: 'deaths', count: 2, hours: 12, lot: 'A', lots: 1, of: 18 })).toContain(
      '2 fish of lot A died within 12 h, 11.1 % of 18',
    );
    expect(said({ code: 'ammonia-not-judged', total: 1, missing: ['pH', 'salinity'] })).toContain(
      'without pH and salinity',
    );
    expect(said({ code: 'second-signs', text: 'x'.repeat(200), first: null }).length).toBeLessThan(240);
  });

  it('names the entry that a fish is read as only where that says more', () => {
    expect(
      said({
        code: 'copper-intolerant-fish',
        fish: 'mandarin',
        listedAs: 'Mandarins',
        advice: 'avoid',
        reason: 'dragonet',
      }),
    ).not.toContain('read as');
    expect(
      said({
        code: 'copper-intolerant-fish',
        fish: 'scooter',
        listedAs: 'Dragonets',
        advice: 'avoid',
        reason: 'dragonet',
      }),
    ).toContain('(read as Dragonets)');
  });
});
