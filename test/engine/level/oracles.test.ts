import { lossScore } from '../../../src/engine/level/lossScore.js';
import { copperMgPerLitre, copperPerRootDay, fraction } from '../../../src/engine/units/quantity.js';
import { eventsOf, type Line } from './eventsOf.js';
import { jointNormal, type Tank } from './jointNormal.js';
import { libraryFilter, librarySmoothed } from './libraryOracle.js';
import { modelOf } from './modelOf.js';
import { randomLog } from './randomLog.js';

const meter = { accuracy: copperMgPerLitre(0.05), percent: fraction(0.03) };
const sigma = (reading: number) => (0.05 + 0.03 * reading) / 1.96;

function tankOf(seed: number): Tank {
  const rate = [0, 0.004, 0.09, 0.4][seed % 4]!;
  const drift = [0.02, 0.001, 0.2][seed % 3]!;
  return { volume: 200, strength: 10, sigma, rate, drift };
}
const settingsOf = ({ rate, drift }: Tank) => ({ ...meter, lossRate: rate, drift: copperPerRootDay(drift) });
const seeds = Array.from({ length: 40 }, (_, index) => index + 1);

describe('levelModel against the joint normal written down whole', () => {
  it.each(seeds)('agrees in level and band, log %i', (seed) => {
    const tank = tankOf(seed);
    // Every third log starts without a reading, so that the flat prior is carried through doses and changes.
    const lines = seed % 3 === 0 ? randomLog(seed, 16).slice(1) : randomLog(seed, 16);
    const model = modelOf(lines, settingsOf(tank));
    const whole = jointNormal(lines, tank);
    expect(lines.some(([, kind]) => kind === 'reading')).toBe(true);
    lines.forEach((_, at) => {
      const mean = whole.mean[at]!;
      const half = 1.96 * whole.spread[at]!;
      expect(Math.abs(model.expected[at]! - Math.max(0, mean))).toBeLessThan(1e-7);
      expect(Math.abs(model.high[at]! - Math.max(0, mean + half))).toBeLessThan(1e-7);
      expect(Math.abs(model.low[at]! - Math.max(0, mean - half))).toBeLessThan(1e-7);
    });
  });
});

describe('levelModel against a general-purpose Kalman filter', () => {
  it.each(seeds)('foretells the readings of log %i alike', (seed) => {
    const tank = tankOf(seed);
    const lines = randomLog(seed, 30);
    const model = modelOf(lines, settingsOf(tank));
    const library = libraryFilter(lines, tank);
    let compared = 0;
    lines.forEach(([, kind, reading], at) => {
      if (kind !== 'reading' || at === 0) return;
      const spread = Math.sqrt(library.aheadVariance[at]! + sigma(reading) ** 2);
      expect(Math.abs(model.predicted[at]! - library.ahead[at]!)).toBeLessThan(1e-10);
      expect(Math.abs(model.predictionSpread[at]! - spread)).toBeLessThan(1e-10);
      expect(Math.abs(model.innovation[at]! - (reading - library.ahead[at]!) / spread)).toBeLessThan(1e-8);
      compared++;
    });
    expect(compared).toBeGreaterThan(5);
    const { logLikelihood } = lossScore(model.path.steps, tank);
    expect(logLikelihood).toBeCloseTo(library.logLikelihood, 9);
  });

  it.each(seeds.slice(0, 12))('smooths log %i alike', (seed) => {
    const tank = tankOf(seed);
    const lines = randomLog(seed, 25);
    const model = modelOf(lines, settingsOf(tank));
    for (let at = 0; at < lines.length; at++) {
      const { mean, spread } = librarySmoothed(lines, tank, at);
      expect(Math.abs(model.expected[at]! - Math.max(0, mean))).toBeLessThan(1e-8);
      expect(Math.abs(model.high[at]! - Math.max(0, mean + 1.96 * spread))).toBeLessThan(1e-7);
    }
  });

  it('would notice a wrong one: the oracle differs where the drift does', () => {
    const lines: Line[] = [
      [0, 'reading', 2],
      [1, 'reading', 2.2],
    ];
    const tank = { ...tankOf(1), drift: 0.02 };
    const model = modelOf(lines, settingsOf({ ...tank, drift: 0.03 }));
    expect(Math.abs(model.expected[1]! - librarySmoothed(lines, tank, 1).mean)).toBeGreaterThan(1e-4);
  });
});

describe('eventsOf', () => {
  it('keeps the order and the usual details of its lines', () => {
    const events = eventsOf([
      [1, 'reading', 2],
      [1, 'change', 50],
    ]);
    expect([...events.kind, ...events.detail]).toEqual([0, 1, 2, NaN]);
  });
});
