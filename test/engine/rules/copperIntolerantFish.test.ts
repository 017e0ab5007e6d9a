import { copperIntolerantFish } from '../../../src/engine/rules/copperIntolerantFish.js';
import { treatmentFrom } from './treatmentFrom.js';

const card = (fish: string): string => `volume | 200 L\nform | chelated\nfish | ${fish}`;
const log = (fishIn: string): string => `Date | Copper | Fish in\n2026-03-01 | 2.25 |\n2026-03-02 | 2.25 | ${fishIn}`;
const found = (fishIn: string, fish = '-'): unknown[] =>
  copperIntolerantFish
    .find(treatmentFrom(log(fishIn), card(fish)), new Set())
    .map((finding) =>
      finding.code === 'copper-intolerant-fish'
        ? [finding.severity, finding.row, finding.fish, finding.advice]
        : [finding.code],
    );

describe('copperIntolerantFish', () => {
  it.each([
    ['2 cleaner shrimp', 'never'],
    ['yellow tang, 1 seahorse', 'avoid'],
    ['bamboo shark (20 cm)', 'never'],
  ])('is a danger at the row where %j comes in', (fishIn, advice) => {
    expect(found(fishIn)).toEqual([['danger', 3, expect.any(String), advice]]);
  });

  it('names the fish of the card', () => {
    expect(found('', 'yellow tang, mandarin, hermit crab x3')).toEqual([
      ['danger', null, 'mandarin', 'avoid'],
      ['danger', null, 'hermit crab', 'never'],
    ]);
  });

  it.each(['2 yellow tangs', '5 x chromis, clownfish pair', 'coral beauty', '3', 'none', 'some fish nobody knows'])(
    'is silent about %j',
    (fishIn) => {
      expect(found(fishIn, 'yellow tang')).toEqual([]);
    },
  );

  it('is silent without fish', () => {
    expect(
      copperIntolerantFish.find(treatmentFrom('Date | Copper\n2026-03-01 | 2.25', card('none')), new Set()),
    ).toEqual([]);
  });
});
