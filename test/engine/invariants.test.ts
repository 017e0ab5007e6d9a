import fc from 'fast-check';
import { standInHost, type Answer, type ArgumentIn, type CellIn } from '../host/standInHost.js';

const host = standInHost();
const call = (id: string, ...args: readonly ArgumentIn[]): Answer => host.call(id, ...args);
const number = (id: string, ...args: readonly ArgumentIn[]): number => {
  const answer = call(id, ...args);
  if (typeof answer !== 'number') throw new Error(`${id}(${JSON.stringify(args)}) is ${JSON.stringify(answer)}`);
  return answer;
};
type Rows = (number | string)[][];
const body = (id: string, ...args: readonly ArgumentIn[]): Rows => {
  const answer = call(id, ...args);
  if (!Array.isArray(answer)) throw new Error(`${id}(${JSON.stringify(args)}) is ${JSON.stringify(answer)}`);
  return answer.slice(1) as Rows;
};

const runs = { seed: 46082, numRuns: 200 };
const check = <T extends unknown[]>(
  arbitraries: { [K in keyof T]: fc.Arbitrary<T[K]> },
  holds: (...values: T) => void,
): void =>
  fc.assert(
    fc.property(fc.tuple<T>(...arbitraries), (values) => holds(...values)),
    runs,
  );

const volume = fc.double({ min: 20, max: 5000, noNaN: true });
const strength = fc.double({ min: 0.2, max: 100, noNaN: true });
const level = fc.double({ min: 0.01, max: 2.5, noNaN: true });
const part = fc.double({ min: 0.01, max: 0.95, noNaN: true });
const expectClose = (x: number, y: number): void => {
  expect(Math.abs(x - y)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(y)));
};

describe('an advice that is followed', () => {
  it('DOSE, applied with RISE, lands on target', () => {
    check([volume, level, part, strength], (v, wanted, share, s) => {
      const now = wanted * share;
      expectClose(now + number('RISE', v, number('DOSE', v, now, wanted, s), s), wanted);
    });
  });

  it('RAMP ends at the target, less what a syringe cannot measure, and each row is its doses so far', () => {
    check([volume, part, strength, fc.constantFrom('gradual', 'sensitive', 'urgent', 3)], (v, share, s, pace) => {
      const now = 2.25 * share;
      const answer = call('RAMP', v, now, 2.25, s, 46082, pace);
      if (!Array.isArray(answer)) {
        expect(answer).toMatchObject({ message: expect.stringContaining('makes steps of 0') as string });
        return;
      }
      let given = 0;
      for (const [, dose, after] of answer.slice(1)) {
        given += Number(dose);
        expect(Math.abs(Number(after) - Math.min(2.25, now + number('RISE', v, given, s)))).toBeLessThan(1e-9);
      }
      const last = Number(answer.at(-1)?.[2]);
      expect(last).toBeLessThanOrEqual(2.25);
      expect(last).toBeGreaterThan(2.25 - number('RISE', v, 0.1, s) - 1e-9);
    });
  });

  it('CHANGEDOSE brings the new water to the level, so that the level and the mass stay', () => {
    check([volume, level, part, strength], (v, now, share, s) => {
      const change = Math.max(1.5, v * share);
      const dose = number('CHANGEDOSE', change, now, s);
      const replacement = number('RISE', change, dose, s);
      expectClose(number('AFTERCHANGE', v, now, change, replacement), now);
      expectClose(dose * s, change * now);
      expectClose(number('CHANGEDOSE', `${share * 100}%`, now, s, v), number('CHANGEDOSE', `${share * v} L`, now, s));
    });
  });

  it('AMMONIACHANGE dilutes ammonia to the target and keeps the copper', () => {
    check([volume, level, part, strength], (v, copper, share, s) => {
      const [[change, dose] = []] = body('AMMONIACHANGE', v, 1, share, copper, s);
      expectClose(1 - Number(change) / v, share);
      expectClose(Number(dose) * s, Number(change) * copper);
    });
  });

  it('CHANGETOLOWER, carried out, lands on target', () => {
    check([volume, level, part, part], (v, now, share, fresh) => {
      const wanted = now * share;
      const change = number('CHANGETOLOWER', v, now, wanted, wanted * fresh);
      expectClose(number('AFTERCHANGE', v, now, `${change} L`, wanted * fresh), wanted);
    });
  });

  it('CHANGESTOCLEAR changes are enough, and one fewer is not', () => {
    check([level, part, part], (now, share, each) => {
      const wanted = now * share;
      const changes = number('CHANGESTOCLEAR', now, wanted, `${each * 100}%`);
      let left = now;
      for (let i = 0; i < changes - 1; i++) left = number('AFTERCHANGE', 100, left, `${each * 100}%`);
      if (changes > 0) expect(left).toBeGreaterThan(wanted);
      expect(number('AFTERCHANGE', 100, left, `${each * 100}%`)).toBeLessThanOrEqual(wanted + 2e-9);
    });
  });
});

describe('mass', () => {
  it('is kept by DOSESPLIT: the doses add up to the total, rounded down to the syringe', () => {
    const total = fc.integer({ min: 300, max: 9000 });
    check([total, fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 3 })], (tenths, doses, days) => {
      const rows = body('DOSESPLIT', tenths / 10 + 0.04, doses, days);
      expect(rows).toHaveLength(doses * days);
      expectClose(
        rows.reduce((sum, row) => sum + Number(row[1]), 0),
        tenths / 10,
      );
      expectClose(Number(rows.at(-1)?.[2]), tenths / 10);
    });
  });

  it('is kept by AFTEREVAPORATION and by THIN', () => {
    check([volume, level, part, strength], (v, now, share, s) => {
      expectClose(number('AFTEREVAPORATION', v, now, v * share) * (1 - share), now);
      const [[stock, water] = []] = body('THIN', s, s * share, 100);
      expectClose(Number(stock) + Number(water), 100);
      expectClose(Number(stock) * s, 100 * s * share);
    });
  });

  it('comes back from VOLUMEBYDOSE, STOCKGRAMS and SALINITY', () => {
    check([volume, strength, fc.double({ min: 1, max: 41, noNaN: true })], (v, s, salinity) => {
      const rise = number('RISE', v, (v * 1.5) / s, s);
      expectClose(number('VOLUMEBYDOSE', (v * 1.5) / s, s, 0, rise), v);
      expectClose(number('STOCKSTRENGTH', number('STOCKGRAMS', s, 2), 2), s);
      const gravity = number('SPECIFICGRAVITY', salinity, 24);
      expect(Math.abs(number('SALINITY', gravity, 24) - salinity)).toBeLessThan(1e-6);
    });
  });
});

/** A log on a grid of 1/64 day, which binary numbers hold exactly, with the keeper's terms. */
interface Log {
  readonly when: number[];
  readonly copper: CellIn[];
  readonly arrived: number | null;
  readonly longestGap: number | string | null;
  readonly confirm: number | null;
}

const hundredths = fc.integer({ min: 175, max: 265 }).map((x) => x / 100);
const reading: fc.Arbitrary<CellIn> = fc.oneof(
  { weight: 8, arbitrary: hundredths },
  { weight: 2, arbitrary: fc.integer({ min: 195, max: 255 }).map((x) => x / 100) },
  { weight: 1, arbitrary: hundredths.map((x) => `~${x}`) },
  { weight: 1, arbitrary: hundredths.map((x) => `${x} ppm`) },
  { weight: 1, arbitrary: fc.constantFrom<CellIn[]>('>5.0', '<1.9', '2.0-2.2', '0 mg/L', 'none', 'void 2.1', null) },
);
const gap = fc.constantFrom(0.25, 0.5, 1, 1, 1, 1.5, 1.515625, 2, 3, 4, 4.015625, 6);
const log: fc.Arbitrary<Log> = fc
  .tuple(
    fc.array(fc.tuple(gap, reading), { minLength: 1, maxLength: 40 }),
    fc.option(fc.integer({ min: 46080, max: 46110 })),
    fc.constantFrom<(number | string | null)[]>(null, null, 'none', 48),
    fc.constantFrom(null, 1, 2),
  )
  .map(([rows, arrived, longestGap, confirm]) => {
    let at = 46082;
    return {
      when: rows.map(([days]) => (at += days)),
      copper: rows.map(([, cell]) => cell),
      arrived,
      longestGap,
      confirm,
    };
  });
const column = (cells: readonly CellIn[]): CellIn[][] => cells.map((cell) => [cell]);

/** A hold function asked about a log; the fourth argument is its own, `as of` or `days`. */
const asked = (it: Log, own: CellIn = null): ArgumentIn[] => [
  column(it.when),
  column(it.copper),
  'chelated',
  own,
  it.arrived,
  it.longestGap,
  it.confirm,
];
const hasReading = (it: Log): boolean => !('error' in Object(call('HOLDDAYS', ...asked(it))));

describe('the hold', () => {
  it('moves with the times, and nothing else does', () => {
    check([log.filter(hasReading), fc.integer({ min: -10000, max: 10000 })], (it, shift) => {
      const later = {
        ...it,
        when: it.when.map((at) => at + shift),
        arrived: it.arrived === null ? null : it.arrived + shift,
      };
      const moved = (answer: Answer): unknown => (typeof answer === 'number' ? answer + shift : '');
      const onlyMoved = (rows: Rows, ...times: readonly number[]): Rows =>
        rows.map((row) => row.map((cell, i) => (times.includes(i) && typeof cell === 'number' ? cell + shift : cell)));
      expect(number('HOLDDAYS', ...asked(later))).toBe(number('HOLDDAYS', ...asked(it)));
      for (const id of ['HOLDSTART', 'HOLDENDS']) {
        const answer = call(id, ...asked(later));
        expect(typeof answer === 'number' ? answer : '').toBe(moved(call(id, ...asked(it))));
      }
      expect(body('HOLDROWS', ...asked(later))).toEqual(onlyMoved(body('HOLDROWS', ...asked(it)), 0));
      expect(body('HOLDS', ...asked(later, 5))).toEqual(onlyMoved(body('HOLDS', ...asked(it, 5)), 0, 1));
    });
  });

  it('does not look ahead: the first rows say what they said when they were the last', () => {
    check([log, fc.nat()], (it, n) => {
      const count = (n % it.when.length) + 1;
      const early = { ...it, when: it.when.slice(0, count), copper: it.copper.slice(0, count) };
      const rows = body('HOLDROWS', ...asked(early));
      if (rows[0]?.[0] === 'none') return;
      expect(body('HOLDROWS', ...asked(it)).slice(0, rows.length)).toEqual(rows);
      expect(body('HOLDROWS', ...asked(it, it.when[count - 1]))).toEqual(rows);
    });
  });

  it('does not mind the order of the rows', () => {
    check([log.filter(hasReading), fc.infiniteStream(fc.nat())], (it, stream) => {
      const order = it.when.map((_, i) => [stream.next().value as number, i] as const).sort((a, b) => a[0] - b[0]);
      const mixed = { ...it, when: order.map(([, i]) => it.when[i]!), copper: order.map(([, i]) => it.copper[i]!) };
      const withoutRow = (rows: Rows): Rows => rows.map((row) => row.slice(0, 5));
      expect(call('HOLDDAYS', ...asked(mixed))).toEqual(call('HOLDDAYS', ...asked(it)));
      const [start, began] = [call('HOLDSTART', ...asked(mixed)), call('HOLDSTART', ...asked(it))];
      expect(typeof start === 'number' ? start : '').toBe(typeof began === 'number' ? began : '');
      expect(withoutRow(body('HOLDS', ...asked(mixed)))).toEqual(withoutRow(body('HOLDS', ...asked(it))));
    });
  });

  it('says the same in all of its functions', () => {
    check([log.filter(hasReading), fc.integer({ min: 1, max: 20 })], (it, wanted) => {
      const days = number('HOLDDAYS', ...asked(it));
      const holds = body('HOLDS', ...asked(it, wanted));
      const running = holds.find((hold) => hold[4] === 'still running');
      expect(running?.[2] ?? 0).toBe(days);

      const lastDone = body('HOLDROWS', ...asked(it)).at(-1)?.[4];
      if (lastDone !== '') expect(lastDone).toBe(Math.floor((days + 1 / 86400) * 100) / 100);
      else expect(days).toBe(0);

      const start = call('HOLDSTART', ...asked(it));
      expect(typeof start === 'number').toBe(running !== undefined);
      if (running !== undefined) expect(start).toBe(running[0]);

      const enough = holds.find((hold) => hold[3] === 'yes') ?? running;
      const ends = call('HOLDENDS', ...asked(it, wanted));
      if (enough === undefined) expect(ends).toMatchObject({ error: '#N/A' });
      else expect(ends).toBe(Number(enough[0]) + wanted);
    });
  });

  it('does not change where a row is repeated, or a blank one added', () => {
    check([log.filter(hasReading), fc.nat()], (it, n) => {
      const at = n % it.when.length;
      const twice = { ...it, when: [...it.when, it.when[at]!], copper: [...it.copper, it.copper[at]!] };
      const answers = (of: Log): unknown[] => [call('HOLDDAYS', ...asked(of)), body('HOLDS', ...asked(of))];
      expect(answers(twice)).toEqual(answers(it));
      expect(answers(it)).toEqual(answers(it));
      const gappy = [[null], ...column(it.when), ['']] as CellIn[][];
      expect(call('HOLDDAYS', gappy, [[''], ...column(it.copper), [null]], ...asked(it).slice(2))).toEqual(
        call('HOLDDAYS', ...asked(it)),
      );
    });
  });
});
