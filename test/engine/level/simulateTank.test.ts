import { simulateTank } from '../../../src/engine/level/simulateTank.js';
import {
  copperMgPerLitre,
  copperPerRootDay,
  days,
  fraction,
  hours,
  litres,
  serialDay,
} from '../../../src/engine/units/quantity.js';
import { tankOf, usualTreatment } from './tank.js';

const quiet = {
  lossPerDay: fraction(0),
  drift: copperPerRootDay(0),
  topOffPerDay: litres(0),
  testJitter: hours(0),
  meter: { accuracy: copperMgPerLitre(0), percent: fraction(0) },
};

describe('simulateTank', () => {
  it('is the same tank for the same seed, and another for another', () => {
    expect(tankOf({ seed: 5 })).toEqual(tankOf({ seed: 5 }));
    expect(tankOf({ seed: 6 }).trueLevel).not.toEqual(tankOf({ seed: 5 }).trueLevel);
  });

  it('raises to the aim by the planned doses and keeps it where nothing disturbs', () => {
    const { rows, trueLevel } = tankOf({ ...quiet, change: null });
    const doses = rows.filter(({ kind }) => kind === 'dose');
    // 2.25 mg/L × 200 L ÷ 10 mg/mL = 45 mL in 4 days of 5
    expect(doses).toHaveLength(20);
    expect(doses.reduce((sum, { amount }) => sum + amount, 0)).toBeCloseTo(45, 9);
    expect(trueLevel.at(-1)).toBeCloseTo(2.25, 9);
    expect(rows.filter(({ kind }) => kind === 'reading')).toHaveLength(4 * 2 + 30);
    expect(rows.at(-1)).toMatchObject({ kind: 'reading', amount: 2.25 });
  });

  it('logs in time order, from the start, to the minute, with rows below a heading', () => {
    const { rows, events } = tankOf();
    expect(rows[0]).toMatchObject({ when: 46082.375, kind: 'reading' });
    rows.forEach(({ when }, at) => {
      expect(when).toBeGreaterThanOrEqual(rows[at - 1]?.when ?? 0);
      expect(Math.abs(when * 1440 - Math.round(when * 1440))).toBeLessThan(1e-6);
    });
    expect(events.count).toBe(rows.length);
    expect([events.row[0], events.row.at(-1)]).toEqual([2, rows.length + 1]);
    expect(events.when.at(-1)).toBe(rows.at(-1)?.when);
  });

  it('loses copper, and its keeper answers a low test with a dose up to the aim', () => {
    const { rows } = tankOf({ ...quiet, change: null, lossPerDay: fraction(0.02) });
    const low = rows.findIndex(({ kind, amount, when }) => kind === 'reading' && when > 46087 && amount < 2.05);
    expect(rows[low + 1]).toMatchObject({ kind: 'dose' });
    expect(rows[low + 1]!.when - rows[low]!.when).toBeCloseTo(0.5 / 24, 6);
    expect(rows[low + 1]!.trueLevel).toBeCloseTo(2.25, 1);
    const held = rows.filter(({ when }) => when > 46087);
    expect(Math.min(...held.map(({ trueLevel }) => trueLevel))).toBeGreaterThan(1.95);
  });

  it('evaporates and is topped off with what is missing', () => {
    const { rows } = tankOf({ ...quiet, change: null, topOffPerDay: litres(4) });
    const topOffs = rows.filter(({ kind }) => kind === 'topOff');
    expect(topOffs).toHaveLength(33);
    expect(topOffs.reduce((sum, { amount }) => sum + amount, 0)).toBeCloseTo(4 * 33, -1);
    const last = rows.lastIndexOf(topOffs.at(-1)!);
    // Since the test before, 1.5 h ago, nothing but evaporation; topped off to 0.1 L
    expect(rows[last - 1]!.trueLevel / rows[last]!.trueLevel).toBeCloseTo(200 / (200 - 4 * (22.5 / 24)), 3);
  });

  it('changes water, matched without a trace, unmatched with its dilution', () => {
    const share = fraction(0.25);
    const everyDays = days(7);
    const matched = tankOf({ ...quiet, change: { everyDays, share, replacement: null } });
    const changes = matched.rows.filter(({ kind }) => kind === 'change');
    expect(changes).toHaveLength(4);
    expect(changes[0]).toMatchObject({ amount: 50, detail: NaN });
    expect(changes[0]!.trueLevel).toBeCloseTo(2.25, 9);
    const thinned = tankOf({ ...quiet, change: { everyDays, share, replacement: copperMgPerLitre(1) } });
    const first = thinned.rows.find(({ kind }) => kind === 'change');
    expect(first?.trueLevel).toBeCloseTo(2.25 * 0.75 + 0.25, 9);
  });

  it('reads with the spread of the meter', () => {
    const meter = { accuracy: copperMgPerLitre(0.098), percent: fraction(0.0245) };
    const { rows } = tankOf({ ...quiet, change: null, meter, days: days(1500), aim: copperMgPerLitre(2.4) });
    const errors = rows.flatMap(({ kind, amount, trueLevel, when }) =>
      kind === 'reading' && when > 46090 ? [(amount - trueLevel) / ((0.098 + 0.0245 * trueLevel) / 1.96)] : [],
    );
    const spread = Math.sqrt(errors.reduce((sum, x) => sum + x * x, 0) / errors.length);
    expect(errors.length).toBeGreaterThan(1400);
    expect(spread).toBeGreaterThan(0.94);
    expect(spread).toBeLessThan(1.06);
  });

  it('has no level below 0, and no other time than the given', () => {
    const { rows } = tankOf({ drift: copperPerRootDay(0.5), start: serialDay(10) });
    expect(Math.min(...rows.map(({ amount }) => amount))).toBeGreaterThanOrEqual(0);
    expect(Math.min(...rows.map(({ trueLevel }) => trueLevel))).toBeGreaterThanOrEqual(0);
    expect(rows.at(-1)!.when).toBeLessThan(10 + 34);
  });

  it('refuses doses that no syringe measures', () => {
    const tank = simulateTank({ ...usualTreatment, volume: litres(0.5) });
    expect(tank.ok).toBe(false);
  });
});
