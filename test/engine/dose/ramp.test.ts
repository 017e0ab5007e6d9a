import * as fc from 'fast-check';
import type { FormName } from '../../../src/engine/dose/forms.js';
import type { Pace } from '../../../src/engine/dose/pacePlan.js';
import { ramp } from '../../../src/engine/dose/ramp.js';
import { copperMgPerLitre, copperMgPerMl, litres, millilitres, serialDay } from '../../../src/engine/units/quantity.js';

interface Asked {
  readonly volume?: number;
  readonly level?: number;
  readonly wanted?: number;
  readonly strength?: number;
  readonly pace?: Pace;
  readonly dosesADay?: number;
  readonly form?: FormName;
  readonly smallest?: number;
}

const start = 46082; // 2026-03-01

const raise = (asked: Asked = {}) =>
  ramp({
    volume: litres(asked.volume ?? 200),
    level: copperMgPerLitre(asked.level ?? 0),
    wanted: copperMgPerLitre(asked.wanted ?? 2.25),
    strength: copperMgPerMl(asked.strength ?? 10),
    start: serialDay(start),
    pace: asked.pace ?? 'gradual',
    dosesADay: asked.dosesADay,
    form: asked.form,
    smallest: millilitres(asked.smallest ?? 0.1),
  });

const steps = (asked: Asked = {}) => {
  const result = raise(asked);
  if (!result.ok) throw new Error(result.problem.code);
  return result.value;
};

const hoursOf = (asked: Asked) => steps(asked).map(({ at }) => Math.round((at - start) * 2400) / 100);

describe('ramp', () => {
  it('raises gradually: 4 days of 5 doses, 3 hours apart', () => {
    const all = steps();
    expect(all).toHaveLength(20);
    expect(hoursOf({}).slice(0, 7)).toEqual([0, 3, 6, 9, 12, 24, 27]);
    // 45 mL in 20: 2.25 mL each, running 2.25 → 2.3, 4.5, 6.75 → 6.8, 9.0
    expect(all.slice(0, 4).map(({ dose }) => dose)).toEqual([2.3, 2.2, 2.3, 2.2]);
    expect(all[0]?.levelAfter).toBeCloseTo(0.115, 12);
    expect(all.at(-1)?.levelAfter).toBe(2.25);
    expect(all.reduce((sum, { dose }) => sum + dose, 0)).toBeCloseTo(45, 9);
  });

  it('raises sensitive fish over 7 days of 5 doses', () => {
    expect(steps({ pace: 'sensitive' })).toHaveLength(35);
    expect(hoursOf({ pace: 'sensitive' }).at(-1)).toBe(156);
  });

  it('raises urgently round the clock in 24 hours', () => {
    expect(hoursOf({ pace: 'urgent' })).toEqual([0, 6, 12, 18]);
    expect(hoursOf({ pace: 'urgent', dosesADay: 6 })).toEqual([0, 4, 8, 12, 16, 20]);
    expect(hoursOf({ pace: 'urgent', dosesADay: 1 })).toEqual([0]);
  });

  it('takes a number of days, 5 doses a day unless asked otherwise', () => {
    expect(steps({ pace: 3 })).toHaveLength(15);
    expect(hoursOf({ pace: 2, dosesADay: 2 })).toEqual([0, 12, 24, 36]);
  });

  it("tests before each day's first dose", () => {
    expect(steps().map(({ testFirst }) => testFirst)).toEqual(Array.from({ length: 20 }, (_, i) => i % 5 === 0));
    expect(steps({ pace: 'urgent' }).map(({ testFirst }) => testFirst)).toEqual([true, false, false, false]);
  });

  it('lets the test decide from 80 % of the wanted level on', () => {
    // 16 of 20 equal doses are 80 %
    expect(steps().map(({ testDecides }) => testDecides)).toEqual(Array.from({ length: 20 }, (_, i) => i >= 15));
    expect(steps({ level: 2 }).every(({ testDecides }) => testDecides)).toBe(true);
  });

  it('marks a dose that raises by more than a quarter of the wanted level, half when urgent', () => {
    expect(steps({ pace: 1, dosesADay: 4 }).some(({ large }) => large)).toBe(false);
    expect(steps({ pace: 1, dosesADay: 3 }).every(({ large }) => large)).toBe(true);
    expect(steps({ pace: 'urgent', dosesADay: 2 }).some(({ large }) => large)).toBe(false);
    expect(steps({ pace: 'urgent', dosesADay: 1 }).every(({ large }) => large)).toBe(true);
  });

  it('has no step where the level is the wanted one', () => {
    expect(steps({ level: 2.25 })).toEqual([]);
  });

  it('is guarded as copperDose and splitDose', () => {
    expect(raise({ level: 2.5, wanted: 2 })).toMatchObject({ problem: { code: 'lowering-by-dose' } });
    expect(raise({ wanted: 2.6 })).toMatchObject({ problem: { code: 'above-band', band: 'chelated' } });
    expect(raise({ wanted: 0.3, form: 'sulfate' })).toMatchObject({ problem: { code: 'above-band', band: 'sulfate' } });
    expect(raise({ volume: 10, strength: 100 })).toMatchObject({ problem: { code: 'dose-step-zero', doses: 20 } });
  });

  it('never passes the wanted level, rises with each dose and ends within one smallest of it', () => {
    const level = fc.double({ min: 0, max: 2.55, noNaN: true });
    fc.assert(
      fc.property(
        level,
        level,
        fc.double({ min: 10, max: 5000, noNaN: true }),
        fc.double({ min: 0.2, max: 100, noNaN: true }),
        fc.constantFrom<Pace>('gradual', 'sensitive', 'urgent', 3),
        (a, b, volume, strength, pace) => {
          const [from, wanted] = [Math.min(a, b), Math.max(a, b)];
          const result = raise({ volume, level: from, wanted, strength, pace });
          if (!result.ok) return result.problem.code === 'dose-step-zero';
          let before = from;
          for (const step of result.value) {
            expect(step.levelAfter).toBeGreaterThan(before);
            expect(step.levelAfter).toBeLessThanOrEqual(wanted);
            before = step.levelAfter;
          }
          if (result.value.length > 0) expect(wanted - before).toBeLessThan((0.1 * strength) / volume + 1e-9);
          return true;
        },
      ),
    );
  });
});
