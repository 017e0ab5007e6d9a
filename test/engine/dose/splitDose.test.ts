import * as fc from 'fast-check';
import { splitDose } from '../../../src/engine/dose/splitDose.js';
import { hours, millilitres } from '../../../src/engine/units/quantity.js';

interface Asked {
  readonly total: number;
  readonly dosesADay: number;
  readonly days?: number;
  readonly hoursBetween?: number;
  readonly smallest?: number;
}

const split = ({ total, dosesADay, days = 1, hoursBetween, smallest = 0.1 }: Asked) =>
  splitDose({
    total: millilitres(total),
    dosesADay,
    days,
    hoursBetween: hoursBetween === undefined ? undefined : hours(hoursBetween),
    smallest: millilitres(smallest),
  });

const parts = (asked: Asked) => {
  const result = split(asked);
  if (!result.ok) throw new Error(result.problem.code);
  return result.value;
};

describe('splitDose', () => {
  it('spreads equal doses over twelve hours', () => {
    expect(parts({ total: 10, dosesADay: 5 })).toEqual([
      { offset: 0, dose: 2, running: 2 },
      { offset: 3, dose: 2, running: 4 },
      { offset: 6, dose: 2, running: 6 },
      { offset: 9, dose: 2, running: 8 },
      { offset: 12, dose: 2, running: 10 },
    ]);
  });

  it('rounds the running total half up and doses the step', () => {
    // 1.0 mL in 4: 0.25, 0.5, 0.75, 1.0 run as 0.3, 0.5, 0.8, 1.0
    expect(parts({ total: 1, dosesADay: 4 }).map(({ dose }) => dose)).toEqual([0.3, 0.2, 0.3, 0.2]);
    expect(parts({ total: 1, dosesADay: 4 }).map(({ running }) => running)).toEqual([0.3, 0.5, 0.8, 1]);
  });

  it('rounds the total down to a multiple of the smallest', () => {
    expect(parts({ total: 10.19, dosesADay: 1 })[0]?.running).toBe(10.1);
    expect(parts({ total: 10.19, dosesADay: 1, smallest: 0.25 })[0]?.running).toBe(10);
  });

  it('takes a total that is a multiple but for binary noise', () => {
    // 0.3 ÷ 0.1 is 2.9999999999999996 in binary
    expect(parts({ total: 0.3, dosesADay: 3 }).map(({ running }) => running)).toEqual([0.1, 0.2, 0.3]);
    expect(parts({ total: 1234567.7, dosesADay: 1 })[0]?.running).toBe(1234567.7);
  });

  it('starts each day 24 hours after the last', () => {
    expect(parts({ total: 6, dosesADay: 2, days: 3 }).map(({ offset }) => offset)).toEqual([0, 12, 24, 36, 48, 60]);
    expect(parts({ total: 3, dosesADay: 1, days: 3 }).map(({ offset }) => offset)).toEqual([0, 24, 48]);
  });

  it('has no binary noise in its hours', () => {
    // 12 h ÷ 5 = 2.4 h, of which three are 7.2 h
    expect(parts({ total: 6, dosesADay: 6 }).map(({ offset }) => offset)).toEqual([0, 2.4, 4.8, 7.2, 9.6, 12]);
  });

  it('keeps the hours between that are asked for', () => {
    expect(parts({ total: 4, dosesADay: 4, hoursBetween: 2 }).map(({ offset }) => offset)).toEqual([0, 2, 4, 6]);
    expect(parts({ total: 1, dosesADay: 1, hoursBetween: 30 }).map(({ offset }) => offset)).toEqual([0]);
  });

  it("refuses doses that run into the next day's", () => {
    expect(split({ total: 4, dosesADay: 4, hoursBetween: 8 })).toEqual({
      ok: false,
      problem: { code: 'doses-past-a-day', doses: 4, hoursBetween: 8 },
    });
    expect(split({ total: 4, dosesADay: 4, hoursBetween: 7.99 }).ok).toBe(true);
  });

  it('refuses a step of 0', () => {
    expect(split({ total: 0.49, dosesADay: 5 })).toEqual({
      ok: false,
      problem: { code: 'dose-step-zero', total: 0.49, doses: 5, smallest: 0.1 },
    });
    expect(split({ total: 0.05, dosesADay: 1 }).ok).toBe(false);
    expect(split({ total: 0.5, dosesADay: 5 }).ok).toBe(true);
  });

  it('refuses to count more steps than a number holds', () => {
    expect(split({ total: 1e300, dosesADay: 1 })).toEqual({ ok: false, problem: { code: 'answer-too-large' } });
    expect(split({ total: 1, dosesADay: 1, smallest: 1e-300 }).ok).toBe(false);
    expect(split({ total: 1e300, dosesADay: 1, smallest: 1e-300 }).ok).toBe(false);
  });

  it('keeps the sum, and every running total within half a step of its share', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 96 }),
        fc.integer({ min: 1, max: 14 }),
        fc.constantFrom(0.01, 0.05, 0.1, 0.2, 0.25, 0.5, 1),
        fc.double({ min: 0, max: 1e5, noNaN: true }),
        (dosesADay, days, smallest, extra) => {
          const count = dosesADay * days;
          const total = count * smallest + extra;
          const all = parts({ total, dosesADay, days, smallest });
          const units = Math.round((all.at(-1)?.running ?? 0) / smallest);
          expect(all).toHaveLength(count);
          expect(units * smallest).toBeLessThanOrEqual(total + 1e-6 * smallest);
          expect((units + 1) * smallest).toBeGreaterThan(total - 1e-6 * smallest);
          let running = 0;
          const wrong = all.filter((part, i) => {
            const step = Math.round(part.dose / smallest);
            running += step;
            // In whole numbers without limit: units·(i + 1) ÷ count, half up.
            const wanted = (2n * BigInt(units) * BigInt(i + 1) + BigInt(count)) / (2n * BigInt(count));
            return step < 1 || BigInt(running) !== wanted || Math.round(part.running / smallest) !== running;
          });
          expect(wrong).toEqual([]);
        },
      ),
    );
  });
});
