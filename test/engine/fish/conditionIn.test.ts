import { conditionIn } from '../../../src/engine/fish/conditionIn';
import type { Cell } from '../../../src/engine/units/cell';
import { conditions } from '../../../src/engine/fish/conditions';
import { nameWords } from '../../../src/engine/fish/nameWords';
import { message } from '../../../src/engine/text/message';

const key = (text: string): string => {
  const found = conditionIn(text)('condition');
  return found.ok ? found.value.key : found.problem.code;
};
const refusal = (text: Cell) => {
  const found = conditionIn(text)('condition');
  if (found.ok) throw new Error(found.value.key);
  return found.problem;
};

describe('conditionIn', () => {
  it.each([
    ['white spot', 'white-spot'],
    ['ICH', 'white-spot'],
    ['Cryptocaryon irritans', 'white-spot'],
    ['White-spot (ich)', 'white-spot'],
    ['velvet', 'velvet'],
    ['amyloodinium', 'velvet'],
    ['trichodina sp.', 'trichodina'],
    ['Brook', 'brooklynella'],
    ['uronema', 'uronema'],
    ['gill fluke', 'flukes'],
    ['Neobenedenia', 'flukes'],
    ['black ich', 'black-spot'],
    ['Paravortex', 'black-spot'],
    ['bacterial infection', 'bacterial'],
    ['intestinal worms', 'worms'],
    ['lymphocystis', 'lymphocystis'],
    [' Unknown ', 'unknown'],
    ["don't know", 'unknown'],
  ])('reads %s as %s', (text, expected) => expect(key(text)).toBe(expected));

  it('knows every word of its list', () => {
    for (const { key: each, name, also } of conditions)
      for (const word of [name, ...also]) expect(key(word)).toBe(each);
  });

  it('gives no word to two conditions', () => {
    const owner = new Map<string, string>();
    for (const { key: each, name, also } of conditions) {
      for (const word of [name, ...also].map((text) => nameWords(text).join(''))) {
        expect([word, owner.get(word) ?? each]).toEqual([word, each]);
        owner.set(word, each);
      }
    }
    expect(owner.size).toBeGreaterThan(90);
  });

  it('offers the nearest conditions, then unknown, for a word it does not know', () => {
    const problem = refusal('velvit');
    expect(problem).toMatchObject({ code: 'not-a-choice', field: 'condition', given: '"velvit"' });
    expect(problem.code === 'not-a-choice' && problem.choices[0]).toBe('velvet');
    expect(problem.code === 'not-a-choice' && problem.choices.slice(0, 4)).toContain('unknown');
    expect(problem.code === 'not-a-choice' && problem.choices).toHaveLength(conditions.length);
  });

  it('does not choose between two conditions', () => {
    const problem = refusal('ich and velvet');
    expect(problem.code === 'not-a-choice' && problem.choices.slice(0, 2)).toEqual(['white spot', 'velvet']);
  });

  it.each([
    'freshwater ich',
    'fresh water white spot',
    'Fresh-Water velvet',
    'ich (freshwater)',
    'Ichthyophthirius ich',
  ])('gives no marine condition for %j', (text) =>
    expect(refusal(text)).toMatchObject({ code: 'not-a-choice', field: 'condition' }),
  );

  it('asks for a condition where there is none', () => {
    expect(refusal(' ')).toEqual({ code: 'blank', at: { field: 'condition' }, kind: 'condition' });
    expect(refusal(null)).toEqual({ code: 'blank', at: { field: 'condition' }, kind: 'condition' });
  });

  it('refuses what is no text', () => {
    expect(refusal(3)).toEqual({ code: 'not-a-value', at: { field: 'condition' }, given: '3', kind: 'condition' });
    expect(refusal(true).code).toBe('not-a-value');
    expect(refusal({ error: '#N/A' }).code).toBe('error-cell');
    expect(refusal({ cells: 2 }).code).toBe('many-cells');
  });

  it.each([
    '12',
    '__proto__',
    'constructor',
    '🐠',
    '\u0000',
    '()',
    'x'.repeat(10_000),
    'ﷺ'.repeat(80),
    '"'.repeat(500),
  ])('refuses %j in one sentence of at most 200 characters', (text) => {
    expect(refusal(text).code).toBe('not-a-choice');
    expect(message(refusal(text)).length).toBeLessThanOrEqual(200);
    expect(message(refusal(text))).toContain('unknown');
  });
});
