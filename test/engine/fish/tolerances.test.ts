import { references } from '../../../src/engine/references/references';
import { nameWords } from '../../../src/engine/fish/nameWords';
import { tolerances } from '../../../src/engine/fish/tolerances';
import { toleranceReasons } from '../../../src/engine/text/toleranceReasons';

/** Names that two entries share on purpose: each is a trade name or family of both. */
const shared = ['flame', 'razorfish', 'Serranidae'].map((name) => nameWords(name).join(''));

describe('tolerances', () => {
  it('lists at least 150 fish and groups', () => {
    expect(tolerances.length).toBeGreaterThanOrEqual(150);
  });

  it('gives each entry a name, a reason in words and a source', () => {
    for (const entry of tolerances) {
      expect(entry.name).toMatch(/^[A-Z][\p{L}' -]+$/u);
      expect(toleranceReasons[entry.reason].length).toBeGreaterThan(20);
      expect(Object.keys(references)).toContain(entry.source);
    }
  });

  it('uses every reason it has', () => {
    expect(new Set(tolerances.map(({ reason }) => reason))).toEqual(new Set(Object.keys(toleranceReasons)));
  });

  it('shows each entry under a name of its own', () => {
    const names = tolerances.map(({ name }) => nameWords(name).join(''));
    expect(new Set(names).size).toBe(names.length);
  });

  it('gives no name to two entries, but for those that have two meanings', () => {
    const entriesOf = new Map<string, Set<string>>();
    for (const { name, trade, scientific } of tolerances) {
      for (const each of [...trade, ...scientific]) {
        const key = nameWords(each).join('');
        expect(key).not.toBe('');
        entriesOf.set(key, (entriesOf.get(key) ?? new Set()).add(name));
      }
    }
    const twice = [...entriesOf].filter(([, names]) => names.size > 1).map(([key]) => key);
    expect(twice.sort()).toEqual([...shared].sort());
  });

  it('writes scientific names as a capital and one or two words', () => {
    for (const name of tolerances.flatMap(({ scientific }) => scientific))
      expect(name).toMatch(/^[A-Z][a-z]+( [a-z]+)?$/);
  });

  it('takes no advice but from where the list says it comes', () => {
    for (const { advice, reason, source } of tolerances) {
      if (reason === 'invertebrate') expect([advice, source]).toEqual(['never', 'YanongFA165']);
      if (reason === 'elasmobranch') expect([advice, source]).toEqual(['never', 'FishHealthPage']);
      if (reason === 'syngnathid') expect([advice, source]).toEqual(['avoid', 'ZecHadfieldHungerford2017']);
      if (reason === 'dwarf-angelfish') expect([advice, source]).toEqual(['caution', 'HobbyPress2008']);
      if (advice === 'usual care' && reason !== 'orchid-dottyback') expect(['Memory', 'Practice']).toContain(source);
    }
  });

  it('promises nothing', () => {
    const text = [...Object.values(toleranceReasons), ...tolerances.map(({ name }) => name)].join(' ');
    expect(text).not.toMatch(/\b(safe|safely|cured?|clean|guarantee\w*)\b/i);
  });
});
