import fc from 'fast-check';
import { formNames, type FormName } from '../../../src/engine/dose/forms.js';
import { paceNames, type Pace } from '../../../src/engine/dose/pacePlan.js';
import { plan } from '../../../src/engine/plan/plan.js';
import type { PlanAction, PlanStep } from '../../../src/engine/plan/planStep.js';
import { days, serialDay } from '../../../src/engine/units/quantity.js';

const start = 46082 + 8 / 24;

interface Given {
  readonly at?: number;
  readonly form?: FormName;
  readonly hold?: number;
  readonly pace?: Pace;
  readonly medicines?: readonly string[];
}

const planOf = ({
  at = start,
  form = 'chelated',
  hold = 30,
  pace = 'gradual',
  medicines = [],
}: Given = {}): readonly PlanStep[] => plan({ start: serialDay(at), form, days: days(hold), pace, medicines });

/** Days after the first dose, and the hold day, of the only step of a code. */
function place(steps: readonly PlanStep[], code: PlanAction['code'], nth = 0): readonly [number, number | null] | null {
  const step = steps.filter((one) => one.code === code)[nth];
  return step === undefined ? null : [Math.round((step.when - start) * 1e6) / 1e6, step.holdDay];
}

describe('plan', () => {
  it('raises over 4 days, holds 30, and observes 14 to 28 days', () => {
    const steps = planOf();
    expect(place(steps, 'screen')).toEqual([-1, null]);
    expect(place(steps, 'supplies')).toEqual([-1, null]);
    expect(place(steps, 'raise')).toEqual([0, null]);
    expect(place(steps, 'test-decides')).toEqual([3.083333, null]); // dose 16 of 20 after 72 h, and 2 h
    expect(place(steps, 'hold-begins')).toEqual([4, 1]);
    expect(place(steps, 'watch')).toEqual([11, 8]);
    expect(place(steps, 'prepare-observation')).toEqual([17, 14]);
    expect(place(steps, 'transfer')).toEqual([18, 15]);
    expect(place(steps, 'prepare-removal')).toEqual([33, 30]);
    expect(place(steps, 'finish')).toEqual([34, 31]);
    expect(place(steps, 'copper-out')).toEqual([34, null]);
    expect(place(steps, 'test-after-change')).toEqual([36, null]);
    expect(place(steps, 'test-after-change', 1)).toEqual([41, null]);
    expect(place(steps, 'sentinel')).toEqual([36, null]);
    expect(place(steps, 'observe-earliest')).toEqual([48, null]);
    expect(place(steps, 'observe-advised')).toEqual([62, null]);
    expect(place(steps, 'display-fallow')).toEqual([76, null]);
    expect(place(steps, 'short-course')).toBeNull();
  });

  it.each<[Pace, number]>([
    ['gradual', 4],
    ['sensitive', 7],
    ['urgent', 1],
    [3, 3],
    [10, 10],
  ])('begins the hold at the end of raising: %s', (pace, raising) => {
    expect(place(planOf({ pace }), 'hold-begins')).toEqual([raising, 1]);
    expect(place(planOf({ pace }), 'finish')).toEqual([raising + 30, 31]);
  });

  it('names a course under 14 days short and plans no transfer out of it', () => {
    const short = planOf({ hold: 13 });
    expect(place(short, 'short-course')).toEqual([-1, null]);
    expect(place(short, 'transfer')).toBeNull();
    expect(place(short, 'finish')).toEqual([17, 14]);
    expect(place(planOf({ hold: 14 }), 'transfer')).toEqual([18, 15]);
    expect(place(planOf({ hold: 14 }), 'short-course')).toBeNull();
    expect(place(planOf({ hold: 21 }), 'finish')).toEqual([25, 22]);
  });

  it('gives the aim, the low limit and the usual loss of the form', () => {
    expect(planOf({ form: 'sulfate' })).toContainEqual(
      expect.objectContaining({ code: 'supplies', aim: 0.2, lossPerDay: 0.1 }),
    );
    expect(planOf({ form: 'amine' })).toContainEqual(
      expect.objectContaining({ code: 'hold-begins', low: 0.45, aim: 0.5 }),
    );
    expect(planOf({ form: 'chelated' })).toContainEqual(
      expect.objectContaining({ code: 'hold-begins', low: 1.95, aim: 2.25 }),
    );
  });

  it.each<[Pace, number, number]>([
    ['urgent', 20, 2.25],
    [1, 11, 1.8],
    [2, 32, 1.8],
    [3, 53, 1.8],
    ['gradual', 74, 1.8],
    ['sensitive', 128, 1.8],
  ])('puts the test that decides 2 h after the dose that reaches 80 %%: %s', (pace, hours, level) => {
    const step = planOf({ pace }).find(({ code }) => code === 'test-decides');
    expect((step?.when ?? NaN) - start).toBeCloseTo(hours / 24, 6);
    expect(step?.code === 'test-decides' && step.level).toBeCloseTo(level, 9);
  });

  it('counts the tests to have at hand', () => {
    // 4 + 30 days once a day, 4 days a second one: 38, and a tenth: 41.8
    expect(planOf()).toContainEqual(expect.objectContaining({ code: 'supplies', tests: 42 }));
    // every 6 hours of the one day of raising: 4 + 30, and a tenth: 37.4
    expect(planOf({ pace: 'urgent' })).toContainEqual(expect.objectContaining({ code: 'supplies', tests: 38 }));
  });

  it('bathes in praziquantel twice after copper, and observes from the second bath on', () => {
    const steps = planOf({ medicines: ['praziquantel'] });
    expect(place(steps, 'praziquantel')).toEqual([36, null]);
    const codes = steps.map(({ code }) => code);
    expect(codes.indexOf('praziquantel')).toBeGreaterThan(codes.indexOf('test-after-change'));
    expect(place(steps, 'second-praziquantel')).toEqual([43, null]); // day 7 after the first
    expect(place(steps, 'observe-earliest')).toEqual([57, null]);
    expect(place(steps, 'observe-advised')).toEqual([71, null]);
  });

  it('warns of other medicines before the first dose, and leaves none out', () => {
    const given = [
      'Metronidazole',
      'formalin',
      'ammonia binder',
      'hyposalinity',
      'activated carbon',
      'copper sulfate',
      'moon dust',
    ];
    const steps = planOf({ medicines: given });
    expect(place(steps, 'metronidazole')).toEqual([0, null]);
    const warned = steps.filter((step) => step.code === 'warned-medicine' || step.code === 'unknown-medicine');
    expect(warned.map((step) => [step.code, step.given, step.when < start])).toEqual([
      ['warned-medicine', 'formalin', true],
      ['warned-medicine', 'ammonia binder', true],
      ['warned-medicine', 'hyposalinity', true],
      ['warned-medicine', 'activated carbon', true],
      ['warned-medicine', 'copper sulfate', true],
      ['unknown-medicine', 'moon dust', true],
    ]);
  });

  it('never begins before the first day a sheet knows', () => {
    expect(planOf({ at: 1 })[0]?.when).toBe(1);
    expect(planOf({ at: 1.5 })[0]?.when).toBe(1);
  });
});

describe('plan, whatever it is made from', () => {
  const given = fc.record({
    at: fc.integer({ min: 2 * 1440, max: 60000 * 1440 }).map((minutes) => minutes / 1440),
    form: fc.constantFrom(...formNames),
    hold: fc.integer({ min: 1, max: 200 }),
    pace: fc.oneof(fc.constantFrom<Pace>(...paceNames), fc.integer({ min: 1, max: 60 })),
    medicines: fc.array(fc.constantFrom('praziquantel', 'metronidazole', 'formalin', 'x', ''), { maxLength: 4 }),
  });

  it('is in time order, with the hold day that the elapsed days give', () => {
    fc.assert(
      fc.property(given, (terms) => {
        const steps = planOf(terms);
        const begins = steps.find(({ code }) => code === 'hold-begins')?.when ?? NaN;
        for (const [i, step] of steps.entries()) {
          expect(Number.isFinite(step.when)).toBe(true);
          expect(step.when).toBeGreaterThanOrEqual(steps[i - 1]?.when ?? 1);
          if (step.holdDay !== null) expect(step.holdDay).toBe(Math.floor(step.when - begins + 1 / 86400) + 1);
        }
        expect(steps.filter(({ code }) => code === 'finish').map(({ holdDay }) => holdDay)).toEqual([terms.hold + 1]);
      }),
      { numRuns: 300, seed: 11 },
    );
  });

  it('moves with its start and with nothing else', () => {
    fc.assert(
      fc.property(given, (terms) => {
        const shape = (steps: readonly PlanStep[]) => steps.map(({ code, holdDay }) => [code, holdDay]);
        const moved = planOf({ ...terms, at: terms.at + 365 });
        expect(shape(moved)).toEqual(shape(planOf(terms)));
        moved.forEach((step, i) => expect(step.when - 365).toBeCloseTo(planOf(terms)[i]?.when ?? NaN, 6));
      }),
      { numRuns: 100, seed: 12 },
    );
  });
});
