import { nameWords } from '../../../src/engine/fish/nameWords';

const same = (a: string, b: string): void => expect(nameWords(a).join('')).toBe(nameWords(b).join(''));

describe('nameWords', () => {
  it.each([
    ['Yellow Tang', 'yellow tangs'],
    ['sea horses', 'Seahorse'],
    ['WRASSES', 'wrasse'],
    ['gobies', 'goby'],
    ['foxes', 'fox'],
    ['octopuses', 'octopus'],
    ['six-line wrasse', 'Six  Line\tWrasse'],
    ["Potter's angel", 'potters angel'],
    ['Potter’s angel', 'potters angel'],
    ['Móorish ídol', 'moorish idol'],
    ['2 x clownfish', 'clownfish'],
    ['clownfish (pair)', 'clownfish'],
    ['yellow tang 10cm', 'yellow tang'],
    ['Centropyge sp.', 'centropyge'],
    ['butterflyfishes', 'butterflyfish'],
  ])('reads %s as %s', same);

  it('keeps the words that end in s by nature', () => {
    expect(nameWords('Chromis octopus bass')).toEqual(['chromis', 'octopus', 'bass']);
  });

  it('has no words where there are no letters', () => {
    expect(nameWords(' ·—!? ')).toEqual([]);
  });
});
