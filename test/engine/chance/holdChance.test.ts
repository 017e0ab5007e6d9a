import { chanceNeverBelow } from '../../../src/engine/chance/chanceNeverBelow.js';
import { holdChance } from '../../../src/engine/chance/holdChance.js';
import { copperMgPerLitre, copperPerRootDay, fraction } from '../../../src/engine/units/quantity.js';
import { columnsOf, logOf } from '../hold/columnsOf.js';

const low = copperMgPerLitre(1.95);
const meter = { accuracy: copperMgPerLitre(0.1), percent: fraction(0) };
const spread = 0.1 / 1.96;

describe('holdChance', () => {
  it('is the chance of the running hold, its first reading to its last', () => {
    const log = logOf`
      2026-03-01 08:00 | 1.20
      2026-03-02 08:00 | 2.10
      2026-03-03 08:00 | 1.90
      2026-03-04 08:00 | 2.05
      2026-03-05 20:00 | 2.20
      2026-03-06 08:00 | 2.00
    `;
    const expected = chanceNeverBelow({
      when: [0, 1.5, 2],
      level: [2.05, 2.2, 2.0],
      spread: [spread, spread, spread],
      low,
      drift: 0.0195,
    });
    expect(holdChance(log, { low, ...meter })).toEqual({ ok: true, value: expect.closeTo(expected, 9) as number });
  });

  it('is not cut by a long untested stretch: that costs chance', () => {
    const daily = columnsOf(Array.from({ length: 11 }, (_, day) => [46082 + day, 2.1]));
    const gapped = columnsOf([46082, 46092].map((day) => [day, 2.1]));
    const expected = chanceNeverBelow({
      when: [0, 10],
      level: [2.1, 2.1],
      spread: [spread, spread],
      low,
      drift: 0.0195,
    });
    const answer = holdChance(gapped, { low, ...meter });
    expect(answer).toMatchObject({ value: expect.closeTo(expected, 9) as number });
    const tested = holdChance(daily, { low, ...meter });
    expect(answer.ok && tested.ok && answer.value < tested.value).toBe(true);
  });

  it('lets only the lower of two readings at one instant enter, in whatever row', () => {
    const lower = holdChance(
      columnsOf([
        [46082, 2.0],
        [46083, 2.1],
      ]),
      { low, ...meter },
    );
    expect(lower.ok).toBe(true);
    expect(
      holdChance(
        columnsOf([
          [46082, 2.0],
          [46082, 2.3],
          [46083, 2.1],
        ]),
        { low, ...meter },
      ),
    ).toEqual(lower);
    expect(
      holdChance(
        columnsOf([
          [46083, 2.1],
          [46083, 2.4],
          [46082, 2.3],
          [46082, 2.0],
        ]),
        { low, ...meter },
      ),
    ).toEqual(lower);
    const quarterSecond = 0.25 / 86400;
    expect(
      holdChance(
        columnsOf([
          [46082, 2.3],
          [46082 + quarterSecond, 2.0],
          [46083, 2.1],
        ]),
        { low, ...meter },
      ),
    ).toEqual(lower);
  });

  it('takes the low end of a bound and of a range', () => {
    const plain = holdChance(
      columnsOf([
        [46082, 2.0],
        [46083, 5],
      ]),
      { low, ...meter },
    );
    expect(plain.ok).toBe(true);
    expect(
      holdChance(
        columnsOf([
          [46082, '2.0-2.25'],
          [46083, '>5.0'],
        ]),
        { low, ...meter },
      ),
    ).toEqual(plain);
  });

  it('reads more coarsely where the reading is higher, by the percent', () => {
    const expected = chanceNeverBelow({
      when: [0, 1],
      level: [2.0, 2.2],
      spread: [(0.02 + 0.05 * 2.0) / 1.96, (0.02 + 0.05 * 2.2) / 1.96],
      low,
      drift: 0.0195,
    });
    const coarse = { accuracy: copperMgPerLitre(0.02), percent: fraction(0.05) };
    expect(
      holdChance(
        columnsOf([
          [46082, 2.0],
          [46083, 2.2],
        ]),
        { low, ...coarse },
      ),
    ).toMatchObject({
      value: expect.closeTo(expected, 9) as number,
    });
  });

  it('takes another drift', () => {
    const log = columnsOf([
      [46082, 2.1],
      [46086, 2.1],
    ]);
    const of = (drift: number) => {
      const answer = holdChance(log, { low, ...meter, drift: copperPerRootDay(drift) });
      return answer.ok ? answer.value : NaN;
    };
    expect(of(0.0195)).toBe((holdChance(log, { low, ...meter }) as { value: number }).value);
    expect(of(0)).toBeGreaterThan(of(0.0195));
    expect(of(0.0195)).toBeGreaterThan(of(0.2));
  });

  it('has no answer without a reading or a running hold, and refuses a meter without error', () => {
    expect(holdChance(columnsOf([[46082, null]]), { low, ...meter })).toMatchObject({
      problem: { code: 'no-reading' },
    });
    expect(
      holdChance(
        columnsOf([
          [46082, 2.1],
          [46083, 1.9],
        ]),
        { low, ...meter },
      ),
    ).toMatchObject({ problem: { code: 'no-hold' } });
    const perfect = { accuracy: copperMgPerLitre(0), percent: fraction(0) };
    expect(holdChance(columnsOf([[46082, 2.1]]), { low, ...perfect })).toMatchObject({
      problem: { code: 'meter-without-error' },
    });
  });
});
