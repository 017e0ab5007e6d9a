import fc from 'fast-check';
import { distance } from 'fastest-levenshtein';
import { letterSet, lettersApart } from '../../../src/engine/fish/letterSet';

describe('lettersApart', () => {
  it('counts the letters that one text has and the other lacks', () => {
    expect(lettersApart(letterSet('tang'), letterSet('gnat'))).toBe(0);
    expect(lettersApart(letterSet('tang'), letterSet('tank'))).toBe(1);
    expect(lettersApart(letterSet(''), letterSet('abc'))).toBe(3);
    expect(lettersApart(0, -1)).toBe(32);
  });

  it('is never more than the distance it stands in for', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.string({ unit: 'binary' }), (one, other) => {
        expect(lettersApart(letterSet(one), letterSet(other))).toBeLessThanOrEqual(distance(one, other));
      }),
    );
  });
});
