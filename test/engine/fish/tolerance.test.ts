import fc from 'fast-check';
import { tolerance } from '../../../src/engine/fish/tolerance';
import { tolerances } from '../../../src/engine/fish/tolerances';

const advice = (name: string): string => {
  const found = tolerance(name);
  return found.kind === 'listed' ? found.entry.advice : found.kind;
};
const entry = (name: string): string => {
  const found = tolerance(name);
  return found.kind === 'listed' ? found.entry.name : found.kind;
};
const nearest = (name: string): readonly string[] => {
  const found = tolerance(name);
  return found.kind === 'not listed' ? found.nearest : [];
};

describe('tolerance', () => {
  it.each([
    ['coral', 'never'],
    ['cleaner shrimp', 'never'],
    ['hermit crabs', 'never'],
    ['turbo snail', 'never'],
    ['Tridacna maxima', 'never'],
    ['bubble tip anemone', 'never'],
    ['tuxedo urchin', 'never'],
    ['Starfish', 'never'],
    ['live rock', 'never'],
    ['bamboo shark', 'never'],
    ['blue spotted ray', 'never'],
    ['seahorse', 'avoid'],
    ['Doryrhamphus excisus', 'avoid'],
    ['mandarin', 'avoid'],
    ['snowflake eel', 'avoid'],
    ['coral beauty', 'caution'],
    ['flame angelfish', 'caution'],
    ['dwarf angelfish', 'caution'],
    ['dogface puffer', 'caution'],
    ['volitans lionfish', 'caution'],
    ['Acanthuridae', 'caution'],
    ['lyretail anthias', 'caution'],
    ['clownfish', 'usual care'],
    ['Amphiprion ocellaris', 'usual care'],
    ['Chromis viridis', 'usual care'],
    ['royal gramma', 'usual care'],
  ])('advises for %s: %s', (name, expected) => expect(advice(name)).toBe(expected));

  it('finds every entry by each of its names, or a stricter one of the same name', () => {
    for (const each of tolerances) {
      for (const name of [...each.trade, ...each.scientific]) {
        const found = tolerance(name);
        expect(found).toMatchObject({ kind: 'listed', by: 'name' });
        if (found.kind === 'listed' && found.fits.length === 0) expect(found.entry).toBe(each);
      }
    }
  });

  it('does not mind case, accents, hyphens, plurals and spaces', () => {
    for (const name of [
      'YELLOW TANG',
      ' yellow   tangs',
      'Yellow-Tang',
      'yéllow tang',
      'yellowtang',
      'zebrasoma FLAVESCENS',
    ]) {
      expect(entry(name)).toBe('Yellow tang');
    }
  });

  it('takes the strictest entry of a name with two meanings', () => {
    const flame = tolerance('flame');
    expect(flame).toMatchObject({ kind: 'listed', entry: { name: 'Flame angelfish', advice: 'caution' } });
    expect(flame.kind === 'listed' && flame.fits.map(({ name }) => name)).toEqual([
      'Flame angelfish',
      'Flame hawkfish',
    ]);
    expect(advice('clownfish and anemone')).toBe('never');
    expect(advice('anemone and clownfish')).toBe('never');
  });

  it('reads the longer name, not the word inside it', () => {
    expect(entry('coral beauty')).toBe('Coral beauty');
    expect(entry('juvenile coral beauty from the reef')).toBe('Coral beauty');
    expect(entry('yellow watchman shrimp goby')).toBe('Shrimp gobies');
    expect(entry('coral hawkfish')).toBe('Hawkfish');
    expect(entry('mandarin goby')).toBe('Mandarin dragonet');
  });

  it('goes by genus or group where the fish has no entry, and says so', () => {
    expect(tolerance('Centropyge argi')).toMatchObject({
      kind: 'listed',
      by: 'words',
      entry: { name: 'Dwarf angelfish' },
    });
    expect(tolerance('some unknown wrasse')).toMatchObject({ kind: 'listed', by: 'words', entry: { name: 'Wrasses' } });
    expect(tolerance('Centropyge sp.')).toMatchObject({
      kind: 'listed',
      by: 'name',
      entry: { name: 'Dwarf angelfish' },
    });
  });

  it('takes a genus by its initial where only one species fits', () => {
    expect(tolerance('C. bispinosa')).toMatchObject({ kind: 'listed', by: 'initial', entry: { name: 'Coral beauty' } });
    expect(tolerance('p.hepatus')).toMatchObject({ kind: 'listed', by: 'initial', entry: { name: 'Blue tang' } });
    // Echidna nebulosa is on the list; an E. of another species is not.
    expect(advice('E. unheardofia')).toBe('not listed');
  });

  it('does not choose between two species of one initial', () => {
    // Chromis cyanea and Chrysiptera cyanea; Calloplesiops altivelis and Cromileptes altivelis.
    expect(tolerance('C. cyanea')).toEqual({ kind: 'not listed', nearest: ['Chromis cyanea', 'Chrysiptera cyanea'] });
    expect(advice('C. altivelis')).toBe('not listed');
    // Amphiprion biaculeatus and Premnas biaculeatus are one fish under two names.
    expect(entry('A. biaculeatus')).toBe('Maroon clownfish');
  });

  it.each([
    ['clownfsh', 'Clownfish'],
    ['yelow tang', 'Yellow tang'],
    ['yellow tnag', 'Yellow tang'],
    ['manderin goby', 'mandarin goby'],
    ['small manderin goby', 'mandarin goby'],
    ['achiles tang', 'Achilles tang'],
    ['Zebrasoma flavescans', 'Zebrasoma flavescens'],
    ['seahorsse', 'Seahorses'],
    ['anemonie', 'Anemones'],
    ['copperband buterfly', 'copperband butterfly'],
    ['kole', 'Kole tang'],
    ['moorish', 'Moorish idol'],
  ])('never guesses at %s, but offers %s', (name, offered) => {
    expect(advice(name)).toBe('not listed');
    expect(nearest(name)[0]).toBe(offered);
  });

  it('does not take another word for a slip', () => {
    expect(entry('neon wrasse')).toBe('Wrasses');
    expect(entry('blue reef chromis')).toBe('Chromis');
    expect(entry('black tail angel')).toBe('Angelfish');
  });

  it('lets a slip soften nothing that is to stay out of copper', () => {
    expect(advice('cleener shrimp')).toBe('never');
    expect(advice('scalloped hammerhead shark')).toBe('never');
  });

  it('gives the gentlest advice only to the noun itself', () => {
    expect(advice('comet goldfish')).toBe('not listed');
    expect(advice('jack dempsey')).toBe('not listed');
    expect(advice('clown loach')).toBe('not listed');
    expect(advice('lemon damselfish')).toBe('usual care');
    expect(advice('Amphiprion nigripes')).toBe('usual care');
  });

  it('offers three different entries', () => {
    expect(nearest('purple dinosaur')).toHaveLength(3);
    expect(new Set(nearest('purple dinosaur')).size).toBe(3);
  });

  it('does not read a sentence as a name', () => {
    expect(tolerance('ﷺ'.repeat(80))).toEqual({ kind: 'too long' });
    expect(tolerance(`clownfish ${'and others '.repeat(8)}with an anemone`)).toEqual({ kind: 'too long' });
  });

  it.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty', '🐠', '\u0000\u0007', '', ' ', '()', 'クマノミ'])(
    'does not know %j',
    (name) => expect(advice(name)).toBe('not listed'),
  );

  it('answers any text, and never more gently than not listed for letters at random', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (name) => {
        expect(['listed', 'not listed', 'too long']).toContain(tolerance(name).kind);
      }),
    );
  });

  it('is never gentler for the words added before a name', () => {
    const strictness = ['never', 'avoid', 'caution', 'usual care'];
    const names = tolerances.flatMap(({ trade }) => trade);
    fc.assert(
      fc.property(fc.constantFrom(...names), fc.constantFrom(...names), (first, second) => {
        const both = advice(`${first} ${second}`);
        const alone = tolerance(second);
        if (both === 'not listed' || alone.kind !== 'listed') return;
        if (tolerance(`${first} ${second}`).kind === 'listed' && entry(`${first} ${second}`) !== alone.entry.name)
          return;
        expect(strictness.indexOf(both)).toBeLessThanOrEqual(strictness.indexOf(alone.entry.advice));
      }),
    );
  });
});
