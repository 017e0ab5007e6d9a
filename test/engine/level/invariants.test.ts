import fc from 'fast-check';
import type { LevelModel } from '../../../src/engine/level/levelModel.js';
import {
  copperMgPerLitre,
  copperMgPerMl,
  copperPerRootDay,
  days,
  fraction,
  litres,
} from '../../../src/engine/units/quantity.js';
import { eventsOf, type Line } from './eventsOf.js';
import { modelOf } from './modelOf.js';
import { randomLog } from './randomLog.js';
import { modelledTank } from './tank.js';

/** Anything that a log can hold, in time order. */
const anyLine = fc.oneof(
  fc.record({
    kind: fc.constant('reading' as const),
    amount: fc.double({ min: 0, max: 5, noNaN: true }),
    wide: fc.constantFrom(0, 0, 0, 0.2, Infinity),
  }),
  fc.record({ kind: fc.constant('dose' as const), amount: fc.double({ min: 0, max: 50, noNaN: true }) }),
  fc.record({
    kind: fc.constant('change' as const),
    amount: fc.double({ min: 0.1, max: 260, noNaN: true }),
    detail: fc.constantFrom(NaN, 0, 1, 3),
  }),
  fc.record({ kind: fc.constant('topOff' as const), amount: fc.double({ min: 0, max: 150, noNaN: true }) }),
  fc.record({ kind: fc.constant('volume' as const), amount: fc.double({ min: 20, max: 400, noNaN: true }) }),
);
const anyLog = fc
  .array(fc.tuple(fc.constantFrom(0, 0, 1e-6, 0.01, 0.5, 1, 4, 60), anyLine), { minLength: 1, maxLength: 40 })
  .map((steps) => {
    let when = 46082;
    const lines = steps.map(([wait, line]): Line => {
      when += wait;
      if ('wide' in line) return [when, line.kind, line.amount, line.amount + line.wide];
      return 'detail' in line ? [when, line.kind, line.amount, line.detail] : [when, line.kind, line.amount];
    });
    return [[46082, 'reading', 1], ...lines] satisfies Line[];
  });

function imbalance({ massBalance }: LevelModel): number {
  const m = massBalance();
  const parts = [m.start, m.dosed, m.broughtIn, -m.takenOut, -m.lost, m.drifted, m.corrected, -m.end];
  return Math.abs(parts.reduce((sum, x) => sum + x, 0)) / Math.max(...parts.map(Math.abs), 1e-6);
}

describe('the level model', () => {
  it('closes its mass to 1e-9 whatever the log holds', () => {
    fc.assert(
      fc.property(anyLog, fc.constantFrom(0, 0.02, 0.3), (lines, drift) => {
        expect(imbalance(modelOf(lines, { drift: copperPerRootDay(drift) }))).toBeLessThan(1e-9);
      }),
      { numRuns: 500 },
    );
  });

  it('gives numbers only, the low end never below 0, in their order', () => {
    fc.assert(
      fc.property(anyLog, (lines) => {
        const { expected, low, high, expectedBefore, highBefore } = modelOf(lines, { drift: copperPerRootDay(0.02) });
        for (let at = 0; at < expected.length; at++) {
          expect(low[at]!).toBeGreaterThanOrEqual(0);
          expect(expected[at]!).toBeGreaterThanOrEqual(low[at]!);
          expect(high[at]!).toBeGreaterThanOrEqual(expected[at]!);
          expect(expectedBefore[at]!).toBeGreaterThanOrEqual(0);
          expect(highBefore[at]!).toBeGreaterThanOrEqual(expectedBefore[at]!);
          expect(high[at]!).toBeLessThan(Infinity);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('closes its mass in simulated tanks, and ends with what the last level says', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const change = {
        everyDays: days(4),
        share: fraction(0.5),
        replacement: seed % 2 === 0 ? null : copperMgPerLitre(0.4),
      };
      const { model } = modelledTank({ seed, change, topOffPerDay: litres(0) });
      expect(imbalance(model)).toBeLessThan(1e-9);
      expect(Math.abs(model.massBalance().end - 200 * model.expected.at(-1)!)).toBeLessThan(1e-9);
    }
  });

  it('is not moved by moving all times', () => {
    for (let seed = 1; seed <= 10; seed++) {
      const lines = randomLog(seed, 60);
      const moved = modelOf(
        lines.map(([when, ...rest]): Line => [when - 45000, ...rest]),
        { drift: copperPerRootDay(0.02) },
      );
      const model = modelOf(lines, { drift: copperPerRootDay(0.02) });
      expect(Math.abs(moved.lossRate - model.lossRate)).toBeLessThan(1e-9);
      model.expected.forEach((level, at) => expect(Math.abs(level - moved.expected[at]!)).toBeLessThan(1e-9));
      model.high.forEach((level, at) => expect(Math.abs(level - moved.high[at]!)).toBeLessThan(1e-8));
    }
  });

  it('foretells a reading from what came before it alone, at one rate of loss', () => {
    const course = { drift: copperPerRootDay(0.02), lossRate: 0.02 };
    const lines = randomLog(7, 60);
    const whole = modelOf(lines, course);
    for (const first of [1, 10, 31, 59]) {
      const part = modelOf(lines.slice(0, first), course);
      expect([...part.predicted]).toEqual([...whole.predicted.slice(0, first)]);
      expect([...part.predictionSpread]).toEqual([...whole.predictionSpread.slice(0, first)]);
      expect([...part.innovation]).toEqual([...whole.innovation.slice(0, first)]);
    }
  });

  it('leaves level and band at a matched change, and closes the gap between a level before and after', () => {
    fc.assert(
      fc.property(anyLog, (lines) => {
        const { expected, expectedBefore, high, highBefore } = modelOf(lines, { drift: copperPerRootDay(0.02) });
        lines.forEach(([, kind, , detail], at) => {
          const isMatched = kind === 'change' && Number.isNaN(detail ?? NaN);
          if (!isMatched && kind !== 'reading' && kind !== 'volume') return;
          expect(Math.abs(expected[at]! - expectedBefore[at]!)).toBeLessThan(1e-9 * (1 + expected[at]!));
          expect(Math.abs(high[at]! - highBefore[at]!)).toBeLessThan(1e-9 * (1 + high[at]!));
        });
      }),
    );
  });

  it('scales: a thousandth or a thousandfold of all water is the same level', () => {
    const lines = randomLog(3, 60);
    const usual = modelOf(lines, { drift: copperPerRootDay(0.02) });
    for (const scale of [1e-6, 1e-3, 1e3, 1e6]) {
      const scaled = lines.map(([when, kind, amount, detail]): Line => {
        const size = kind === 'reading' ? amount : amount * scale;
        return detail === undefined ? [when, kind, size] : [when, kind, size, detail];
      });
      const model = modelOf(scaled, { volume: litres(200 * scale), drift: copperPerRootDay(0.02) });
      model.expected.forEach((level, at) => expect(level).toBeCloseTo(usual.expected[at]!, 9));
      expect(model.massBalance().dosed / scale).toBeCloseTo(usual.massBalance().dosed, 6);
    }
  });
});

describe('the level model at the ends of what it may meet', () => {
  it('takes two readings in the same minute, and in the same second', () => {
    const model = modelOf(
      [
        [46082, 'reading', 2],
        [46082 + 1 / 1440, 'reading', 2.4],
        [46082 + 1 / 1440, 'reading', 1.6],
      ],
      {
        drift: copperPerRootDay(0.02),
      },
    );
    model.expected.forEach((level) => expect(level).toBeCloseTo(2, 3));
    expect(Math.abs(model.innovation[2]!)).toBeGreaterThan(5);
  });

  it('takes a meter that claims no error at 0, twice at one time', () => {
    const model = modelOf(
      [
        [1, 'reading', 0],
        [1, 'reading', 0],
        [2, 'reading', 0],
        [3, 'reading', 0],
      ],
      {
        accuracy: copperMgPerLitre(0),
        percent: fraction(0.05),
      },
    );
    expect([...model.expected]).toEqual([0, 0, 0, 0]);
    expect(model.high[0]).toBeLessThan(1e-5);
  });

  it('takes gaps of years', () => {
    const years = modelOf(
      [
        [1, 'dose', 40],
        [2000, 'reading', 2],
        [4000, 'reading', 0],
        [9000, 'reading', 1],
      ],
      { drift: copperPerRootDay(0.02) },
    );
    [...years.expected, ...years.high].forEach((level) => expect(Number.isFinite(level)).toBe(true));
    expect(imbalance(years)).toBeLessThan(1e-9);
  });

  it('takes 10,000 events', () => {
    const { tank, model } = modelledTank({ days: days(4500), lossPerDay: fraction(0.01), strength: copperMgPerMl(10) });
    expect(tank.events.count).toBeGreaterThan(10_000);
    expect(Math.abs(model.lossRate - 0.01)).toBeLessThan(0.001);
    expect(imbalance(model)).toBeLessThan(1e-9);
    const inside = tank.trueLevel.filter((level, at) => level >= model.low[at]! && level <= model.high[at]!).length;
    expect(inside / tank.events.count).toBeGreaterThan(0.935);
  });

  it('counts no volume event twice', () => {
    const plain: Line[] = [
      [1, 'reading', 2],
      [2, 'dose', 5],
      [3, 'reading', 2.2],
    ];
    const repeated: Line[] = [plain[0]!, [1, 'volume', 200], plain[1]!, [2, 'volume', 200], plain[2]!];
    expect(modelOf(repeated).expected.at(-1)).toBe(modelOf(plain).expected.at(-1));
    expect(eventsOf(repeated).count).toBe(5);
  });
});
