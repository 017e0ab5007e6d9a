import { slipMeanings } from '../../../../src/engine/rules/steady/slipMeanings.js';

const meant = (written: number) =>
  slipMeanings(written).map(({ cause, meant: level }) => [cause, Number(level.toPrecision(6))]);

describe('slipMeanings', () => {
  it('are other units, points lost or moved, and neighbouring digits changed over', () => {
    expect(meant(22.5)).toEqual([
      ['micrograms', 0.0225],
      ['point moved', 2.25],
      ['point moved', 0.225],
      ['point moved', 225],
      ['point moved', 2250],
      ['milligrams', 22500],
      ['digits swapped', 25.2],
    ]);
  });

  it('take a whole number for one whose point was lost', () => {
    expect(meant(225)).toContainEqual(['point lost', 2.25]);
    expect(meant(2.25)).not.toContainEqual(['point lost', 0.225]);
  });

  it('change over only digits that are written', () => {
    expect(slipMeanings(2.2).every(({ cause }) => cause !== 'digits swapped')).toBe(true);
    expect(meant(0.2)).toContainEqual(['digits swapped', 2]);
    expect(meant(0.2)).not.toContainEqual(['digits swapped', 0.02]);
  });

  it('change nothing over in a number of many places', () => {
    expect(slipMeanings(0.123456).every(({ cause }) => cause !== 'digits swapped')).toBe(true);
  });
});
