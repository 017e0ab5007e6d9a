import { meterFit } from '../../../src/engine/chance/meterFit.js';
import { meterFitsTable } from '../../../src/engine/text/meterFitsTable.js';
import { copperMgPerLitre, fraction } from '../../../src/engine/units/quantity.js';

interface Asked {
  low: number;
  high?: number;
  from: number;
  to: number;
  accuracy: number;
  percent?: number;
}

function fit({ low, high = Infinity, from, to, accuracy, percent = 0 }: Asked) {
  return meterFit({
    band: { low, high },
    readsFrom: copperMgPerLitre(from),
    readsTo: copperMgPerLitre(to),
    accuracy: copperMgPerLitre(accuracy),
    percent: fraction(percent),
  });
}

/** The row below the heading. */
function row(asked: Asked) {
  const answer = fit(asked);
  if (!answer.ok) throw new Error(answer.problem.code);
  const { rows } = meterFitsTable(answer.value);
  expect(rows).toHaveLength(1);
  const [low, top, keep, why] = rows[0] ?? [];
  return { low, top, keep, why };
}

describe('meterFit', () => {
  it('cannot prove 0.15-0.20 with a meter that quantifies from 0.21, whatever its accuracy', () => {
    // Quantification limit and range as printed on the kit sheet; see StandardMethods3500Cu.
    for (const accuracy of [0.001, 0.02, 0.1]) {
      expect(row({ low: 0.15, high: 0.2, from: 0.21, to: 5, accuracy })).toMatchObject({ low: 'no', keep: '' });
    }
    expect(row({ low: 0.15, high: 0.2, from: 0.21, to: 5, accuracy: 0.02 })).toEqual({
      low: 'no',
      top: 'no',
      keep: '',
      why: 'it reads from 0.21, above the top 0.2',
    });
  });

  it('shows a band that is wide for the meter', () => {
    expect(row({ low: 1.95, high: 2.55, from: 0, to: 5, accuracy: 0.1 })).toEqual({
      low: 'yes',
      top: 'yes',
      keep: expect.closeTo(2.033921, 6) as number,
      why: 'readings from 2.034 to 2.466 show both limits with a chance of 95 %',
    });
  });

  it('shows one limit at a time where the meter is coarse for the band', () => {
    expect(row({ low: 0.18, high: 0.21, from: 0.01, to: 5, accuracy: 0.03 })).toMatchObject({
      low: 'yes',
      top: 'yes',
      keep: expect.closeTo(0.205176, 6) as number,
      why: 'one limit at a time: the low from 0.205, the top up to 0.185',
    });
  });

  it('shows neither where it is coarser still', () => {
    expect(row({ low: 0.18, high: 0.21, from: 0.01, to: 5, accuracy: 0.05 })).toEqual({
      low: 'no',
      top: 'no',
      keep: '',
      why:
        'to show the low limit 0.18 it would have to read 0.222, above the top 0.21; ' +
        'to show the top 0.21 it would have to read 0.168, below the low limit 0.18',
    });
  });

  it('needs the limits within its range', () => {
    expect(row({ low: 1.95, high: 2.55, from: 0, to: 2.5, accuracy: 0.05 })).toMatchObject({
      low: 'yes',
      top: 'no',
      why: 'readings from 1.992 show the low limit with a chance of 95 %; it reads to 2.5, below the top 2.55',
    });
    expect(row({ low: 1.95, high: 2.55, from: 0, to: 1.97, accuracy: 0.05 })).toMatchObject({
      low: 'no',
      why: 'to show the low limit 1.95 it would have to read 1.992, and it reads to 1.97; it reads to 1.97, below the top 2.55',
    });
    expect(row({ low: 1.95, high: 2.55, from: 0, to: 1.9, accuracy: 0.05 })).toEqual({
      low: 'no',
      top: 'no',
      keep: '',
      why: 'it reads to 1.9, below the low limit 1.95',
    });
    // Limits of the range count as inside it.
    expect(row({ low: 1.95, high: 2.55, from: 1.95, to: 2.55, accuracy: 0.05 })).toMatchObject({
      low: 'yes',
      top: 'yes',
    });
  });

  it('says so where no top is given', () => {
    expect(row({ low: 1.95, from: 0, to: 5, accuracy: 0.05 })).toEqual({
      low: 'yes',
      top: 'no top given',
      keep: expect.closeTo(1.99196, 5) as number,
      why: 'readings from 1.992 show the low limit with a chance of 95 %',
    });
    expect(row({ low: 1.95, from: 2, to: 5, accuracy: 0.05 })).toMatchObject({
      low: 'no',
      why: 'it reads from 2, above the low limit 1.95',
    });
  });

  it('refuses a range upside down and a meter without error', () => {
    expect(fit({ low: 1.95, from: 5, to: 0.5, accuracy: 0.05 })).toMatchObject({
      problem: { code: 'more-than', field: 'reads from', given: '5', limitField: 'reads to', limit: '0.5' },
    });
    expect(fit({ low: 1.95, from: 0, to: 5, accuracy: 0 })).toMatchObject({ problem: { code: 'meter-without-error' } });
  });
});
