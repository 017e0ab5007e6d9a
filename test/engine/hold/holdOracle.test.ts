import fc from 'fast-check';
import { holdDays } from '../../../src/engine/hold/holdDays.js';
import { holdStart } from '../../../src/engine/hold/holdStart.js';
import { traceHolds } from '../../../src/engine/hold/holdTracer.js';
import type { HoldTerms } from '../../../src/engine/hold/holdTerms.js';
import { columnsOf } from './columnsOf.js';
import { oracleHold, type OracleReading } from './oracle.js';

const start = 46082;
const low = 1.95;

const when = fc.oneof(
  fc.integer({ min: 0, max: 40 }).map((day) => start + day),
  fc.integer({ min: 0, max: 960 }).map((hour) => start + hour / 24),
  fc.double({ min: 0, max: 40, noNaN: true }).map((day) => start + Math.round(day * 86400) / 86400),
);
const level = fc.oneof(
  { weight: 8, arbitrary: fc.integer({ min: 196, max: 240 }).map((x) => x / 100) },
  { weight: 1, arbitrary: fc.constantFrom(1.94, 1.95, 1.949999999999, 1.9499, 0.01) },
  { weight: 1, arbitrary: fc.double({ min: 0.01, max: 3, noNaN: true }) },
);
const log = fc.array(fc.record<OracleReading>({ when, level }), { minLength: 1, maxLength: 45 });
const repeated = log.map((rows) => [
  ...rows,
  ...rows.slice(0, 2).map((row) => ({ ...row, level: row.level - 0.1 > 0 ? row.level - 0.1 : row.level })),
]);
const terms = fc.record(
  {
    gapHours: fc.constantFrom(24, 36, 48, 96, 100.5, Infinity),
    confirm: fc.constantFrom<1 | 2>(1, 2),
    asOf: when,
    arrived: when,
  },
  { requiredKeys: ['gapHours', 'confirm'] },
);

describe('the running hold', () => {
  it('is what an independent reading of its definition says, in 4,000 random logs', () => {
    let running = 0;
    fc.assert(
      fc.property(fc.oneof(log, repeated), terms, (rows, { gapHours, confirm, ...times }) => {
        const columns = columnsOf(rows.map((row) => [row.when, row.level]));
        const holdTerms: HoldTerms = { low, longestGap: gapHours / 24, confirm, ...times };
        const expected = oracleHold(rows, { low, gapHours, confirm, ...times });
        const days = holdDays(traceHolds(columns, holdTerms), holdTerms);
        const began = holdStart(traceHolds(columns, holdTerms), holdTerms);
        if (expected === 'no reading') {
          expect(days).toMatchObject({ ok: false, problem: { code: 'no-reading' } });
          return;
        }
        expect(days.ok && Math.abs(days.value - expected.days) < 1e-6).toBe(true);
        if (expected.start === null) expect(began).toMatchObject({ ok: false, problem: { code: 'no-hold' } });
        else {
          running++;
          expect(began.ok && Math.abs(began.value - expected.start) < 1e-6).toBe(true);
        }
      }),
      { numRuns: 4000, seed: 20260301 },
    );
    expect(running).toBeGreaterThan(1000);
  });
});
