import { tinted } from '../../../src/sheet/xlsx/tinted';

/** How far two colours are apart in the channel that differs most. */
function apart(a: string, b: string): number {
  const channels = (colour: string): number[] => [1, 3, 5].map((at) => parseInt(colour.slice(at, at + 2), 16));
  return Math.max(...channels(a).map((value, index) => Math.abs(value - (channels(b)[index] ?? NaN))));
}

describe('tinted', () => {
  // Greys by hand: 0.75 of 255; half way from 0 to 255. The blues as spreadsheet programs show them (from memory).
  it.each([
    ['#ffffff', -0.25, '#bfbfbf'],
    ['#000000', 0.5, '#808080'],
    ['#4f81bd', 0.8, '#dce6f1'],
    ['#4f81bd', 0.6, '#b8cce4'],
    ['#4f81bd', -0.25, '#366092'],
    ['#4f81bd', -0.5, '#244062'],
  ])('%s by %p is %s', (colour, tint, expected) => {
    expect(apart(tinted(colour, tint), expected)).toBeLessThanOrEqual(1);
  });

  it('goes from black to white and keeps the colour at 0', () => {
    for (const colour of ['#1f4e5f', '#ff0000', '#00ff00', '#ab10ef']) {
      expect([tinted(colour, -1), tinted(colour, 1)]).toEqual(['#000000', '#ffffff']);
      expect(tinted(colour, 0)).toBe(colour);
      expect(apart(tinted(colour, 1e-9), colour)).toBe(0);
    }
  });

  it('leaves a colour alone where the tint is no tint', () => {
    expect([tinted('#1f4e5f', NaN), tinted('#1f4e5f', 7)]).toEqual(['#1f4e5f', '#1f4e5f']);
  });
});
