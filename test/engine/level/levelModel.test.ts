import { levelModel } from '../../../src/engine/level/levelModel.js';
import { copperMgPerLitre, copperPerRootDay, fraction, litres } from '../../../src/engine/units/quantity.js';
import { eventsOf, type Line } from './eventsOf.js';
import { modelOf, usualTank } from './modelOf.js';

const day = 46082;

describe('levelModel by hand', () => {
  it('is the mean of readings where nothing drifts and nothing is lost', () => {
    const model = modelOf(
      [
        [day, 'reading', 2],
        [day + 1, 'reading', 2.1],
        [day + 2, 'reading', 2.2],
      ],
      { lossRate: 0 },
    );
    // (2 + 2.1 + 2.2) ÷ 3 = 2.1; 0.05 ÷ √3; half a band 1.96 of it
    for (const at of [0, 1, 2]) {
      expect(model.expected[at]).toBeCloseTo(2.1, 12);
      expect(model.high[at]).toBeCloseTo(2.1 + 0.098 / Math.sqrt(3), 12);
      expect(model.low[at]).toBeCloseTo(2.1 - 0.098 / Math.sqrt(3), 12);
    }
    expect([...model.residual].map((x) => x.toFixed(12))).toEqual([
      '-0.100000000000',
      '0.000000000000',
      '0.100000000000',
    ]);
    // The second is foretold by the first, 2, with a variance of twice 0.05²; the third by 2.05, with 1.5 times.
    expect(model.predicted[0]).toBeNaN();
    expect(model.predicted[1]).toBeCloseTo(2, 12);
    expect(model.predicted[2]).toBeCloseTo(2.05, 12);
    expect(model.innovation[1]).toBeCloseTo(0.1 / (0.05 * Math.SQRT2), 12);
    expect(model.innovation[2]).toBeCloseTo(0.15 / (0.05 * Math.sqrt(1.5)), 12);
  });

  it('weighs readings by their spread: a percent of the reading, and the width of a range', () => {
    // ± 0.05 + 5 % of 2 = 0.15, and of the range 2.0–2.2 ± 0.05 + 5 % of 2.1 + 0.1 = 0.255; weights 1/0.15² and 1/0.255²
    const model = modelOf(
      [
        [day, 'reading', 2],
        [day, 'reading', 2, 2.2],
      ],
      {
        accuracy: copperMgPerLitre(0.05),
        percent: fraction(0.05),
      },
    );
    const [a, b] = [1 / 0.15 ** 2, 1 / 0.255 ** 2];
    expect(model.expected[1]).toBeCloseTo((2 * a + 2.1 * b) / (a + b), 12);
    expect(model.high[1]! - model.expected[1]!).toBeCloseTo(1 / Math.sqrt(a + b), 12);
    expect(model.residual[1]).toBeCloseTo(2 - model.expected[1]!, 12);
  });

  it('adds a dose, and looks back over it before the first reading', () => {
    // 20 mL × 10 mg/mL ÷ 200 L = 1 mg/L
    const model = modelOf([
      [day, 'dose', 20],
      [day + 0.1, 'dose', 10],
      [day + 0.2, 'reading', 1.6],
    ]);
    expect([...model.expected].map((x) => x.toFixed(12))).toEqual([
      '1.100000000000',
      '1.600000000000',
      '1.600000000000',
    ]);
    expect(model.massBalance().start).toBeCloseTo(20, 9);
    expect(model.massBalance().dosed).toBeCloseTo(300, 9);
    expect(model.massBalance().end).toBeCloseTo(320, 9);
  });

  it('dilutes by an unmatched change, and leaves the level at a matched one', () => {
    const lines: Line[] = [
      [day, 'reading', 2],
      [day, 'change', 50, 0],
      [day, 'change', 100, 1],
      [day, 'change', 150],
    ];
    const model = modelOf(lines);
    // 2·(1 − 50/200) = 1.5; 1.5/2 + 1/2 = 1.25; still 1.25
    expect([...model.expected].map((x) => x.toFixed(12))).toEqual([2, 1.5, 1.25, 1.25].map((x) => x.toFixed(12)));
    // 50 L × 2 + 100 L × 1.5 + 150 L × 1.25 = 437.5 mg out; 0 + 100 + 187.5 in
    expect(model.massBalance().takenOut).toBeCloseTo(437.5, 9);
    expect(model.massBalance().broughtIn).toBeCloseTo(287.5, 9);
    expect(model.expectedBefore[3]).toBeCloseTo(1.25, 12);
    expect(model.expectedBefore[1]).toBeCloseTo(2, 12);
  });

  it('loses copper at a rate that is given', () => {
    const model = modelOf(
      [
        [day, 'reading', 2],
        [day + 5, 'topOff', 0],
      ],
      { lossRate: 0.1 },
    );
    expect(model.expected[1]).toBeCloseTo(2 * Math.exp(-0.5), 12);
    expect(model.lossPerDay).toBeCloseTo(1 - Math.exp(-0.1), 12);
    expect(model.lossRateSpread).toBe(0);
    expect(model.massBalance().lost).toBeCloseTo(400 * (1 - Math.exp(-0.5)), 9);
  });

  it('thickens by evaporation, and thins by topping off', () => {
    // Full on the first day; half of the 20 L are gone half way: 2 mg/L is 2·190/200 = 1.9 in the full tank, 2.11 before.
    const model = modelOf([
      [day, 'topOff', 0],
      [day + 1, 'reading', 2],
      [day + 2, 'topOff', 20],
    ]);
    expect(model.expected[1]).toBeCloseTo(2, 12);
    expect(model.expected[0]).toBeCloseTo(1.9, 12);
    expect(model.expectedBefore[2]).toBeCloseTo((1.9 * 200) / 180, 12);
    expect(model.expected[2]).toBeCloseTo(1.9, 12);
  });

  it('changes the water that is there while some is missing', () => {
    // 400 mg in 190 L; half of it goes, 95 L × 1 mg/L come: 295 mg
    const lines = (replacement: number): Line[] => [
      [day, 'reading', 2],
      [day + 1, 'change', 95, replacement],
      [day + 2, 'topOff', 20],
    ];
    const model = modelOf(lines(1));
    expect(model.expectedBefore[1]).toBeCloseTo(400 / 190, 12);
    expect(model.expected[1]).toBeCloseTo(295 / 190, 12);
    expect(model.expected[2]).toBeCloseTo(295 / 200, 12);
    expect(model.massBalance().takenOut).toBeCloseTo(200, 9);
    expect(model.massBalance().broughtIn).toBeCloseTo(95, 9);
    const matched = modelOf(lines(NaN));
    expect(matched.expected[1]).toBeCloseTo(400 / 190, 12);
    expect(matched.massBalance().takenOut).toBeCloseTo(200, 9);
  });

  it('goes on evaporating after the last top-off as before, up to the largest', () => {
    // 20 L in the 2 days to the top-off, 10 L a day: a day later 10 L are missing, a month later 20 L and no more.
    const model = modelOf([
      [day, 'reading', 2],
      [day + 2, 'topOff', 20],
      [day + 3, 'dose', 0],
      [day + 32, 'dose', 0],
    ]);
    expect(model.expected[2]).toBeCloseTo((2 * 200) / 190, 12);
    expect(model.expected[3]).toBeCloseTo((2 * 200) / 180, 12);
  });

  it('keeps the level where a volume is corrected', () => {
    const model = modelOf([
      [day, 'reading', 2],
      [day, 'volume', 160],
      [day, 'dose', 16],
      [day, 'change', 40, 0],
    ]);
    // 16 mL × 10 ÷ 160 L = 1 mg/L; 40 of 160 L
    expect([...model.expected].map((x) => x.toFixed(12))).toEqual([2, 2, 3, 2.25].map((x) => x.toFixed(12)));
    expect(model.massBalance().corrected).toBeCloseTo(-80, 9);
  });

  it('keeps the level in the tank where a volume is corrected while water is missing', () => {
    const model = modelOf([
      [day, 'reading', 2],
      [day + 1, 'volume', 150],
      [day + 2, 'topOff', 20],
    ]);
    expect(model.expectedBefore[1]).toBeCloseTo((2 * 200) / 190, 12);
    expect(model.expected[1]).toBeCloseTo((2 * 200) / 190, 12);
    // 10 L are missing of 150, in the end 20 L: 2.105·140/150 in the full tank
    expect(model.expected[2]).toBeCloseTo((((2 * 200) / 190) * 140) / 150, 12);
  });

  it('reads "<x" as half of x give or take that half, and lists ">x" without learning from it', () => {
    const model = modelOf(
      [
        [day, 'reading', 0, 0.1],
        [day, 'reading', 5, Infinity],
      ],
      { accuracy: copperMgPerLitre(0.048) },
    );
    expect(model.expected[0]).toBeCloseTo(0.05, 12);
    expect(model.high[0]).toBeCloseTo(0.05 + 0.048 + 0.05, 12);
    expect(model.low[0]).toBe(0);
    expect(model.residual[0]).toBeCloseTo(-0.05, 12);
    expect(model.expected[1]).toBeCloseTo(0.05, 12);
    expect(model.residual[1]).toBeCloseTo(4.95, 12);
    expect(model.predicted[1]).toBeCloseTo(0.05, 12);
    expect(model.predictionSpread[1]).toBeCloseTo((0.048 + 0.05) / 1.96, 12);
    expect(model.innovation[1]).toBeNaN();
  });

  it('reaches the steady spread of a random walk that is read every day', () => {
    const lines = Array.from({ length: 200 }, (_, at): Line => [day + at, 'reading', 2]);
    const model = modelOf(lines, { drift: copperPerRootDay(0.05), lossRate: 0 });
    // P² − q·P − q·R = 0 with q = R = 0.05²: P = q·(1 + √5) ÷ 2; foretold reading: P + R
    expect(model.predictionSpread[199]).toBeCloseTo(0.05 * Math.sqrt((1 + Math.sqrt(5)) / 2 + 1), 12);
    // Both sides: 1 ÷ V = 1 ÷ R + 2 ÷ P, since the past and the future foretell alike
    const both = 0.05 / Math.sqrt(1 + 4 / (1 + Math.sqrt(5)));
    expect(model.high[100]! - 2).toBeCloseTo(1.96 * both, 12);
  });

  it('is known after a change of all the water, and unknown before it', () => {
    const model = modelOf(
      [
        [day, 'dose', 20],
        [day + 1, 'change', 200, 1],
        [day + 2, 'reading', 1.2],
      ],
      {
        drift: copperPerRootDay(0.05),
        lossRate: 0,
      },
    );
    expect(model.expected[0]).toBeNaN();
    expect(model.high[0]).toBeNaN();
    expect(model.expectedBefore[1]).toBeNaN();
    expect(model.expected[1]).toBeCloseTo(1, 12);
    expect(model.high[1]).toBeCloseTo(1, 12);
    // Foretold 1 with variance 0.05², read 1.2 with 0.05²: half way
    expect(model.expected[2]).toBeCloseTo(1.1, 12);
  });

  it('refuses a log without a reading, a dose of unknown strength, and a meter without error', () => {
    const codeOf = (lines: Line[], different = {}) => {
      const model = levelModel({ ...usualTank, ...different, events: eventsOf(lines) });
      return model.ok ? 'none' : model.problem.code;
    };
    expect(codeOf([])).toBe('no-reading');
    expect(codeOf([[day, 'dose', 10]])).toBe('no-reading');
    expect(codeOf([[day, 'reading', 5, Infinity]])).toBe('no-reading');
    expect(
      codeOf(
        [
          [day, 'reading', 2],
          [day, 'dose', 10],
        ],
        { strength: null },
      ),
    ).toBe('blank');
    expect(codeOf([[day, 'reading', 2]], { strength: null })).toBe('none');
    expect(codeOf([[day, 'reading', 2]], { accuracy: copperMgPerLitre(0) })).toBe('meter-without-error');
    expect(
      codeOf([[day, 'reading', 2]], { accuracy: copperMgPerLitre(0), percent: fraction(0.05), volume: litres(1) }),
    ).toBe('none');
  });
});
