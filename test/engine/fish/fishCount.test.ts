import { fishCount } from '../../../src/engine/fish/fishCount.js';

describe('fishCount', () => {
  const counts: readonly (readonly [string, number, readonly string[]])[] = [
    ['3', 3, []],
    ['3 fish', 3, []],
    ['2 tangs', 2, ['tangs']],
    ['5 x chromis', 5, ['chromis']],
    ['5x chromis', 5, ['chromis']],
    ['5 × chromis', 5, ['chromis']],
    ['x5 chromis', 5, ['chromis']],
    ['chromis x5', 5, ['chromis']],
    ['chromis x 5', 5, ['chromis']],
    ['chromis: 5', 5, ['chromis']],
    ['chromis 5', 5, ['chromis']],
    ['chromis (5)', 5, ['chromis']],
    ['~20 anthias', 20, ['anthias']],
    ['20+ anthias', 20, ['anthias']],
    ['about 20 anthias', 20, ['anthias']],
    ['clownfish pair', 2, ['clownfish']],
    ['pair of ocellaris', 2, ['ocellaris']],
    ['2 pairs of ocellaris', 4, ['ocellaris']],
    ['a pair of ocellaris', 2, ['ocellaris']],
    ['trio of anthias', 3, ['anthias']],
    ['a yellow tang', 1, ['yellow tang']],
    ['yellow tang', 1, ['yellow tang']],
    ['tang (sold)', 1, ['tang']],
    ['two tangs', 2, ['tangs']],
    ['a dozen chromis', 12, ['chromis']],
    ['half a dozen chromis', 6, ['chromis']],
    ['school of 7 chromis', 7, ['chromis']],
    ['2 tangs, 5 chromis', 7, ['tangs', 'chromis']],
    ['2 tangs and a clownfish', 3, ['tangs', 'clownfish']],
    ['2 tangs + 3 gobies', 5, ['tangs', 'gobies']],
    ['2 x 3 inch tang', 2, ['tang']],
    ['3" yellow tang', 1, ['yellow tang']],
    ['4 cm goby', 1, ['goby']],
    ['lot 7: 12 chromis', 12, ['chromis']],
    ['2 tangs to display', 2, ['tangs']],
    ['2 tangs → display', 2, ['tangs']],
    ['2 chromis from the wholesaler', 2, ['chromis']],
    ['1 dead', 1, []],
    ['one died overnight', 1, []],
    ['chromis', 1, ['chromis']],
    ['anthias', 1, ['anthias']],
    ['', 0, []],
    ['0', 0, []],
    ['none', 0, []],
    ['no deaths', 0, []],
    ['-', 0, []],
  ];
  it.each(counts)('reads %j as %i', (text, count, names) => {
    expect(fishCount(text, 'fish in')).toMatchObject({ count, names, exact: true, doa: 0, all: false });
  });

  it('keeps one name that has the word and in it as one fish', () => {
    expect(fishCount('yellow tang and blue tang', 'fish in').groups).toHaveLength(2);
    expect(fishCount('black and white heniochus', 'fish in').groups).toHaveLength(1);
    expect(fishCount('yellow tang and blue tang', 'fish in').groups).toHaveLength(2);
  });

  it('finds the fish dead on arrival, among those that came in', () => {
    expect(fishCount('20 anthias, 2 DOA', 'fish in')).toMatchObject({ count: 20, doa: 2 });
    expect(fishCount('20 anthias (2 DOA)', 'fish in')).toMatchObject({ count: 20, doa: 2 });
    expect(fishCount('20 anthias, 1 tang DOA', 'fish in')).toMatchObject({ count: 21, doa: 1 });
    expect(fishCount('1 DOA', 'fish in')).toMatchObject({ count: 1, doa: 1 });
    expect(fishCount('tang DOA', 'fish in')).toMatchObject({ count: 1, doa: 1, names: ['tang'] });
  });

  it('adds the fish dead on arrival to the others that died', () => {
    expect(fishCount('1 DOA', 'dead')).toMatchObject({ count: 1, doa: 1, exact: true });
    expect(fishCount('1 dead, 2 DOA', 'dead')).toMatchObject({ count: 3, doa: 2 });
    expect(fishCount('3 (1 DOA)', 'dead')).toMatchObject({ count: 3, doa: 1 });
    expect(fishCount('DOA', 'dead')).toMatchObject({ count: 1, doa: 1, exact: true });
  });

  it('knows all of them', () => {
    expect(fishCount('all', 'fish out')).toMatchObject({ all: true, exact: true });
    expect(fishCount('all chromis', 'fish out')).toMatchObject({ all: true, names: ['chromis'] });
    expect(fishCount('the rest moved to display', 'fish out')).toMatchObject({ all: true, names: [] });
  });

  it.each([
    'tangs',
    'some',
    'a few chromis',
    'yes',
    '5 or 6 chromis',
    '20-25 chromis',
    '2.5',
    '2/5',
    '2026-03-05',
    '?',
    '99999',
  ])('does not guess a number from %j', (text) => {
    expect(fishCount(text, 'dead').exact).toBe(false);
  });

  it('counts at least two of a plural and none in what is no fish', () => {
    expect(fishCount('tangs', 'dead').count).toBe(2);
    expect(fishCount('a few chromis', 'dead').count).toBe(2);
    expect(fishCount('2026-03-05', 'fish in').count).toBe(0);
  });
});
