import { meterSpread } from '../../../src/engine/chance/meterSpread.js';
import { readingToKeep } from '../../../src/engine/chance/readingToKeep.js';
import { copperMgPerLitre, fraction } from '../../../src/engine/units/quantity.js';
import { normalBelow } from './normalBelow.js';

interface Asked {
  low: number;
  high?: number;
  accuracy: number;
  percent?: number;
  chance?: number;
}

function keep({ low, high = Infinity, accuracy, percent = 0, chance = 0.95 }: Asked) {
  const meter = { accuracy: copperMgPerLitre(accuracy), percent: fraction(percent) };
  return readingToKeep({ band: { low, high }, ...meter, chance: fraction(chance) });
}

describe('meterSpread', () => {
  it('is what is said of 95 % of readings, divided by 1.96', () => {
    const spread = meterSpread({ accuracy: copperMgPerLitre(0.05), percent: fraction(0.04) }, 2);
    // 0.05 + 0.04 × 2 = 0.13
    expect(spread).toBeCloseTo(0.13 / 1.96, 12);
  });
});

describe('readingToKeep', () => {
  it('is the low limit and what the meter may be off', () => {
    // 0.18 + 1.644854 × 0.02 ÷ 1.96
    expect(keep({ low: 0.18, high: 0.21, accuracy: 0.02 })).toMatchObject({
      ok: true,
      value: expect.closeTo(0.1967842, 6) as number,
    });
    // (1.95 + 0.8392110 × 0.05) ÷ (1 − 0.8392110 × 0.05)
    expect(keep({ low: 1.95, accuracy: 0.05, percent: 0.05 })).toMatchObject({
      value: expect.closeTo(2.0792056, 6) as number,
    });
    expect(keep({ low: 1.95, accuracy: 0.05, chance: 0.5 })).toMatchObject({
      value: expect.closeTo(1.95, 12) as number,
    });
    expect(keep({ low: 1.95, accuracy: 0, percent: 0.1 })).toMatchObject({
      value: expect.closeTo(1.95 / (1 - 0.083921105), 6) as number,
    });
  });

  it('leaves a true level at or above the limit with that chance', () => {
    for (const chance of [0.6, 0.9, 0.95, 0.99]) {
      for (const percent of [0, 0.03, 0.1]) {
        const answer = keep({ low: 0.5, accuracy: 0.03, percent, chance });
        if (!answer.ok) throw new Error(answer.problem.code);
        const spread = (0.03 + percent * answer.value) / 1.96;
        expect(normalBelow((answer.value - 0.5) / spread)).toBeCloseTo(chance, 8);
      }
    }
  });

  it('may equal the top', () => {
    const needed = 0.18 + (1.6448536269514722 * 0.02) / 1.96;
    expect(keep({ low: 0.18, high: needed, accuracy: 0.02 }).ok).toBe(true);
    expect(keep({ low: 0.18, high: needed - 1e-8, accuracy: 0.02 }).ok).toBe(false);
  });

  it('says that a meter cannot show a band', () => {
    expect(keep({ low: 0.18, high: 0.21, accuracy: 0.05 })).toMatchObject({
      ok: false,
      problem: { code: 'meter-too-coarse', low: 0.18, high: 0.21, needed: expect.closeTo(0.2219606, 6) as number },
    });
    // 3.92 × 50 % ÷ 1.96 = 1: however high it reads, the level may be too low.
    expect(keep({ low: 1.95, accuracy: 0.05, percent: 0.5, chance: 0.99998 })).toMatchObject({
      problem: { code: 'meter-too-coarse', high: null, needed: null },
    });
  });

  it('refuses a meter without error, and a chance that would be lost more often than won', () => {
    expect(keep({ low: 1.95, accuracy: 0 })).toMatchObject({ problem: { code: 'meter-without-error' } });
    expect(keep({ low: 1.95, accuracy: 0.05, chance: 0.49 })).toMatchObject({
      problem: { code: 'out-of-limits', at: { field: 'chance' }, given: '49%' },
    });
  });
});
