import { steadyLevels, type SteadyLevels } from '../../../../src/engine/rules/steady/steadyLevels.js';
import { steadyModel } from '../../../../src/engine/rules/steady/steadyModel.js';
import { fates } from '../../../../src/engine/rules/steady/steadyPass.js';
import { chelatedCard, raisedLog } from '../raisedLog.js';
import { treatmentFrom } from '../treatmentFrom.js';

const treatmentOf = (days: string) => treatmentFrom(raisedLog + days, chelatedCard);

/** Rows and fates of the readings that do not fit. */
function oddOnes(days: string): (readonly [number, number])[] {
  const treatment = treatmentOf(days);
  const { fate } = steadyLevels(treatment) as SteadyLevels;
  return [...fate].flatMap((each, index) => (each > fates.fits ? [[treatment.events.row[index]!, each] as const] : []));
}

const then = '  2026-03-09 08:00 | 2.25 |\n  2026-03-10 08:00 | 2.24 |\n';

describe('steadyLevels', () => {
  it('finds every reading of a log without a fault fitting', () => {
    expect(oddOnes(then)).toEqual([]);
  });

  it('tells a stray reading from a jump by the readings after it', () => {
    expect(oddOnes(`  2026-03-08 08:00 | 1.4 |\n${then}`)).toEqual([[9, fates.stray]]);
    expect(oddOnes('  2026-03-08 08:00 | 1.4 |\n  2026-03-09 08:00 | 1.4 |')).toEqual([[9, fates.jump]]);
    expect(oddOnes('  2026-03-08 08:00 | 1.4 |')).toEqual([[9, fates.last]]);
  });

  it('sees two stray readings in a row', () => {
    expect(oddOnes(`  2026-03-08 08:00 | 0.22 |\n  2026-03-08 20:00 | 0.22 |\n${then}`)).toEqual([
      [9, fates.jump],
      [11, fates.jump],
    ]);
    expect(oddOnes(`  2026-03-08 08:00 | 0.22 |\n  2026-03-08 20:00 | 5.1 |\n${then}`)).toEqual([
      [9, fates.stray],
      [10, fates.stray],
    ]);
  });

  it('keeps a slip from spoiling what is expected of the readings after it', () => {
    const treatment = treatmentOf(`  2026-03-08 08:00 | 19.9 |\n${then}`);
    const { predicted, rate } = steadyLevels(treatment) as SteadyLevels;
    expect(predicted[treatment.events.row.indexOf(10)]).toBeCloseTo(2.25, 1);
    expect(rate).toBeLessThan(0.01);
    expect(treatment.levels?.predicted[treatment.events.row.indexOf(10)]).toBeGreaterThan(5);
  });

  it('widens the spread where a meter does worse than its card says', () => {
    const noisy = Array.from({ length: 16 }, (_, day) => {
      const level = 2.25 + (day % 2 === 0 ? 0.12 : -0.12) + 0.01 * (day % 3);
      return `  2026-03-${day + 10} 08:00 | ${level.toFixed(2)} |\n`;
    });
    expect(oddOnes(noisy.join(''))).toEqual([]);
  });
});

describe('steadyModel', () => {
  it('is the model of the log without its stray readings', () => {
    const steady = steadyModel(treatmentOf(`  2026-03-08 08:00 | 19.9 |\n${then}`));
    const without = treatmentOf(then);
    expect(steady?.events.count).toBe(without.events.count);
    expect(steady?.model.expected[without.events.count - 1]).toBeCloseTo(2.245, 1);
  });

  it("is the log's own model where no reading is astray", () => {
    const treatment = treatmentOf(then);
    expect(steadyModel(treatment)?.model).toBe(treatment.levels);
  });
});
