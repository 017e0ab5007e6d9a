import { formNames } from '../../../src/engine/dose/forms.js';
import { plan } from '../../../src/engine/plan/plan.js';
import { planTable } from '../../../src/engine/text/planTable.js';
import { days, serialDay } from '../../../src/engine/units/quantity.js';

const start = serialDay(46082.375);
const medicines = [
  'praziquantel',
  'metronidazole',
  'formalin',
  'ammonia binder',
  'hyposalinity',
  'carbon',
  'copper',
  '=x"y',
];

function rowsOf(
  given: Partial<Parameters<typeof plan>[0]> = {},
): readonly (readonly [number, number | '', string, string])[] {
  const table = planTable(plan({ start, form: 'chelated', days: days(30), pace: 'gradual', medicines: [], ...given }));
  return table.rows.map(([when, day, doing, why]) => [
    Number(when),
    day === '' ? '' : Number(day),
    String(doing),
    String(why),
  ]);
}

describe('planTable', () => {
  it('begins each line with the trade word for what is to be done, in order', () => {
    const words = [
      'screen',
      'measure',
      'test',
      'raise',
      'hold',
      'transfer',
      'finish',
      'copper out',
      'observe',
      'display fallow',
    ];
    const lines = rowsOf().map(([, , doing]) => doing);
    const places = words.map((word) => lines.findIndex((line) => line.startsWith(word)));
    expect(places.every((at) => at >= 0)).toBe(true);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it('gives the figures of the form, the pace and the course', () => {
    const text = rowsOf({ form: 'sulfate', pace: 'sensitive', days: days(21) })
      .map((row) => row.join(' '))
      .join('\n');
    expect(text).toContain('to 0.2 mg/L over 7 days');
    expect(text).toContain('hold day 1, if a test reads 0.18 mg/L or more');
    expect(text).toContain('litres × 0.2 ÷ its mg/mL');
    expect(text).toContain('up to 10 % of the first a day');
    expect(text).toContain('39 copper tests'); // 7 + 21 + 7 = 35, and a tenth
    expect(text).toContain('public aquaria held 21 days (published: Zec, Hadfield, Hungerford (2021))');
    expect(text).toContain('finish: 21 days are done');
  });

  it('has numbers or nothing in When and Day, and says why in every row, with where it comes from', () => {
    for (const form of formNames) {
      for (const hold of [1, 7, 13, 14, 20, 21, 29, 30, 60]) {
        for (const [when, day, doing, why] of rowsOf({ form, days: days(hold), medicines })) {
          expect(Number.isFinite(when) && (day === '' || Number.isInteger(day))).toBe(true);
          expect(doing.length).toBeGreaterThan(20);
          expect(why).toMatch(/common practice|published|from memory|derived|your own pace|no rule here/);
          expect(`${doing} ${why}`).not.toMatch(/undefined|NaN|\bnull\b|\bsafe\b|\bcured\b|\bclean\b/i);
        }
      }
    }
  });

  it('marks what is published, derived or from memory', () => {
    const whyOf = (word: string): string =>
      rowsOf({ medicines }).find(([, , doing]) => doing.startsWith(word))?.[3] ?? '';
    expect(whyOf('praziquantel, second')).toMatch(/^derived: .*published: Bondad-Reantaso et al\. \(1995\)/);
    expect(whyOf('display fallow')).toMatch(/from memory: Colorni, Burgess \(1997\)/);
    expect(whyOf('finish')).toMatch(/common practice; published: Hadfield, Clayton \(2011\)/);
    expect(whyOf('metronidazole')).toMatch(/weak evidence: no study/);
  });

  it('repeats an unknown medicine and sends its keeper to a veterinarian', () => {
    const line = rowsOf({ medicines: ['moon dust', '=x"y'] }).filter(([, , doing]) => doing.includes('not known here'));
    expect(line.map(([, , doing]) => doing.startsWith('"'))).toEqual([true, true]);
    expect(line.every(([, , doing]) => doing.includes('ask an aquatic veterinarian'))).toBe(true);
  });
});
