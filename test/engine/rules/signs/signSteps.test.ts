import fc from 'fast-check';
import { signSteps, type SignStep } from '../../../../src/engine/rules/signs/signSteps.js';
import { phrases } from './phrases.js';

const start = 46082.333;

/** Steps of a log written one row a line: day, text, step expected. */
function expectSteps(log: readonly (readonly [day: number, text: string, step: SignStep])[]): void {
  const texts = log.map(([day, text], i) => ({ when: start + day, row: i + 2, text }));
  expect(signSteps(texts).map(({ when, text, step }) => [Math.round((when - start) * 1e6) / 1e6, text, step])).toEqual(
    log,
  );
}

describe('signSteps', () => {
  it('tests first, lowers and waits, raises slowly, and stops at the second time', () => {
    expectSteps([
      [0, 'all fine', ''],
      [1, 'not eating', 'test first'],
      [1.5, 'lethargic', 'lower and wait'],
      [2, 'breathing heavily', 'lower and wait'],
      [3, 'eating again', 'raise slowly'],
      [4, 'all fine', 'raise slowly'],
      [9, 'not eating', 'stop copper'],
      [10, 'eating again', 'stop copper'],
      [11, 'purple', 'stop copper'],
      [30, 'all fine', 'stop copper'],
    ]);
  });

  it('stops at a sign three days of 24 hours after the last one', () => {
    expectSteps([
      [0, 'not eating', 'test first'],
      [2.99, 'lethargic', 'lower and wait'],
      [5.98, 'lethargic', 'lower and wait'],
      [8.98, 'lethargic', 'stop copper'],
    ]);
  });

  it('keeps the three days to within a second', () => {
    const second = 1 / 86400;
    expectSteps([
      [0, 'flashing', 'test first'],
      [3 - 0.000005, 'flashing', 'stop copper'],
    ]);
    expect(
      signSteps([
        { when: start, row: 1, text: 'flashing' },
        { when: start + 3 - 3 * second, row: 2, text: 'flashing' },
      ])[1]?.step,
    ).toBe('lower and wait');
  });

  it('takes "still" and "no change" for the same episode, however long', () => {
    expectSteps([
      [0, 'not eating', 'test first'],
      [4, 'still not eating', 'lower and wait'],
      [8, 'no change', 'lower and wait'],
      [12, 'not eating', 'stop copper'],
    ]);
  });

  it('stops at "still" where a recovery is on record', () => {
    expectSteps([
      [0, 'not eating', 'test first'],
      [1, 'eating again', 'raise slowly'],
      [2, 'still not eating', 'stop copper'],
    ]);
  });

  it('waits on while the fish is better but not well', () => {
    expectSteps([
      [0, 'improving', ''],
      [1, 'not eating', 'test first'],
      [3, 'eating a little', 'lower and wait'],
      [5, 'almost normal', 'lower and wait'],
      [7, 'lethargic', 'lower and wait'],
      [8, 'eating well', 'raise slowly'],
      [9, 'eating a little', 'raise slowly'],
    ]);
  });

  it('lists what it cannot read and goes on as if it were not there', () => {
    expectSteps([
      [0, 'purple', 'unread'],
      [1, 'not eating', 'test first'],
      [2, 'purple', 'unread'],
      [2.5, 'no change', 'lower and wait'],
      [3, 'eating again', 'raise slowly'],
      [4, '12', 'unread'],
    ]);
    expectSteps([[0, 'no change', 'unread']]);
  });

  it('takes the rows of one instant together: one sign decides', () => {
    expectSteps([
      [0, 'eating', 'test first'],
      [0, 'not eating', 'test first'],
      [0, 'purple', 'unread'],
      [1, 'eating', 'lower and wait'],
      [1, 'lethargic', 'lower and wait'],
      [2, 'eating', 'raise slowly'],
    ]);
  });

  it('waits for the fish that was ill, where the texts name fish', () => {
    expectSteps([
      [0, 'tang not eating, clownfish fine', 'test first'],
      [1, 'clowns eating', 'lower and wait'],
      [1.5, 'clown flashing', 'lower and wait'],
      [2, 'tang eating', 'lower and wait'],
      [2.5, 'clown fine', 'raise slowly'],
    ]);
    expectSteps([
      [0, 'tang not eating', 'test first'],
      [1, 'all eating', 'raise slowly'],
    ]);
    expectSteps([
      [0, 'not eating', 'test first'],
      [1, 'tang eating', 'raise slowly'],
    ]);
  });

  it.each([
    'no spots',
    'no flashing',
    'no deaths',
    '0 dead',
    'not dead',
    'breathing normal',
    'eyes clear',
    'no new spots',
    'active',
  ])('takes %j for no recovery of a fish that did not eat', (remark) => {
    expectSteps([
      [0, 'not eating', 'test first'],
      [1, remark, 'lower and wait'],
      [2, 'not eating', 'lower and wait'],
      [3, 'eating', 'raise slowly'],
    ]);
  });

  it.each([
    'breathing normal',
    'eating well',
    'eating again',
    'all eating',
    'ok',
    'back to normal',
    'eating and active',
  ])('takes %j for a recovery from heavy breathing', (text) => {
    expectSteps([
      [0, 'breathing heavily', 'test first'],
      [1, 'eating', 'lower and wait'],
      [2, text, 'raise slowly'],
      [3, 'breathing heavily', 'stop copper'],
    ]);
  });

  it('waits until every sign of the episode is answered, in one text or in several', () => {
    expectSteps([
      [0, 'not eating', 'test first'],
      [1, 'flashing', 'lower and wait'],
      [2, 'eating but breathing heavily', 'lower and wait'],
      [3, 'no flashing', 'lower and wait'],
      [4, 'breathing normally', 'raise slowly'],
    ]);
    expectSteps([
      [0, 'not eating', 'test first'],
      [1, 'lethargic', 'lower and wait'],
      [2, 'eating', 'raise slowly'],
    ]);
    expectSteps([
      [0, 'flashing', 'test first'],
      [1, 'eating a little, no flashing', 'lower and wait'],
      [2, 'eating', 'raise slowly'],
    ]);
    expectSteps([
      [0, 'not eating', 'test first'],
      [1, 'none', 'lower and wait'],
      [2, 'not eating', 'lower and wait'],
    ]);
  });

  it.each(['eating', 'none'])('takes a bare %j for a recovery once three days are without a sign', (text) => {
    expectSteps([
      [0, 'flashing', 'test first'],
      [1, text, 'lower and wait'],
      [2.9, text, 'lower and wait'],
      [3, 'no spots', 'lower and wait'],
      [3.5, text, 'raise slowly'],
    ]);
  });

  it('takes days of texts it cannot read for no clear days', () => {
    const unread = [1, 2, 3].map((day) => [day, 'purple', 'unread'] as const);
    expectSteps([[0, 'not eating', 'test first'], ...unread, [4, 'not eating', 'lower and wait']]);
    expectSteps([
      [0, 'not eating', 'test first'],
      [1, 'purple', 'unread'],
      [4, 'not eating', 'stop copper'], // three days of silence
    ]);
    expectSteps([
      [0, 'breathing heavily', 'test first'],
      [1, 'no spots', 'lower and wait'],
      [2, 'purple', 'unread'],
      [4, 'breathing heavily', 'stop copper'], // no sign for four days, and one text says so
    ]);
  });

  it('has nothing to say of nothing', () => {
    expect(signSteps([])).toEqual([]);
  });
});

describe('signSteps, whatever is written', () => {
  const text = fc.constantFrom(...Object.values(phrases).flat());
  const log = fc
    .array(fc.record({ day: fc.integer({ min: 0, max: 90 }), text }), { maxLength: 30 })
    .map((rows) => rows.map(({ day, text: written }, i) => ({ when: start + day / 3, row: i + 1, text: written })));

  it('never goes back from stop copper, and never stops without an earlier sign', () => {
    let stopped = 0;
    fc.assert(
      fc.property(log, (texts) => {
        const rows = signSteps(texts);
        const first = rows.findIndex(({ step }) => step === 'stop copper');
        if (first === -1) return;
        stopped++;
        expect(rows.slice(first).every(({ step }) => step === 'stop copper')).toBe(true);
        expect(rows.slice(0, first).some(({ step }) => step === 'test first')).toBe(true);
      }),
      { numRuns: 1000, seed: 3 },
    );
    expect(stopped).toBeGreaterThan(100);
  });

  it('gives a row for every text, in time order, whatever the order they come in', () => {
    fc.assert(
      fc.property(log, fc.infiniteStream(fc.nat()), (texts, keys) => {
        const rows = signSteps(texts);
        expect(rows.map(({ row }) => row).sort((a, b) => a - b)).toEqual(texts.map(({ row }) => row));
        expect(rows.every(({ when }, i) => i === 0 || when >= (rows[i - 1]?.when ?? Infinity))).toBe(true);
        const shuffled = texts
          .map((one) => ({ one, key: keys.next().value }))
          .sort((a, b) => a.key - b.key)
          .map(({ one }) => one);
        expect(signSteps(shuffled)).toEqual(rows);
      }),
      { numRuns: 500, seed: 4 },
    );
  });

  it('does not look ahead, and a shift of all times shifts the times alone', () => {
    fc.assert(
      fc.property(log, fc.nat({ max: 90 }), (texts, day) => {
        const cut = start + day / 3;
        const rows = signSteps(texts);
        expect(signSteps(texts.filter(({ when }) => when <= cut))).toEqual(rows.filter(({ when }) => when <= cut));
        const shifted = signSteps(texts.map((one) => ({ ...one, when: one.when + 1000 })));
        expect(shifted.map(({ row, step }) => [row, step])).toEqual(rows.map(({ row, step }) => [row, step]));
      }),
      { numRuns: 500, seed: 5 },
    );
  });

  it('says test first only until the first instant with a sign is over', () => {
    fc.assert(
      fc.property(log, (texts) => {
        const first = signSteps(texts).filter(({ step }) => step === 'test first');
        expect(new Set(first.map(({ when }) => when)).size).toBeLessThanOrEqual(1);
        expect(first.length === 0 || first.some(({ reading }) => reading === 'sign')).toBe(true);
      }),
      { numRuns: 500, seed: 6 },
    );
  });
});
