import type { Finding } from '../../../src/engine/rules/finding.js';
import { meterCannotShow } from '../../../src/engine/rules/meterCannotShow.js';
import { dailyLog, days } from './dailyLog.js';
import { treatmentFrom } from './treatmentFrom.js';

function found(terms: string): readonly Finding[] {
  return meterCannotShow.find(treatmentFrom(dailyLog('Date | Copper', days(5)), `volume | 200 L\n${terms}`), new Set());
}

describe('meterCannotShow', () => {
  it('warns, once, of a meter that would have to read above the top', () => {
    expect(found('form | sulfate\nmeter accuracy | 0.05')).toMatchObject([
      {
        code: 'meter-cannot-show',
        severity: 'warning',
        row: null,
        reason: 'too-coarse',
        needed: expect.closeTo(0.222, 3),
        top: 0.21,
      },
    ]);
  });

  it('warns of one whose percent is too large', () => {
    expect(found('form | chelated\nmeter percent | 40%')).toMatchObject([{ reason: 'too-coarse' }]);
  });

  it('warns of one that reads from above the low limit', () => {
    expect(found('form | sulfate\nmeter from | 0.25')).toMatchObject([{ reason: 'limit-unread', from: 0.25 }]);
  });

  it('warns of a test for free copper in a form that holds it', () => {
    expect(found('form | amine\nreads | free')).toMatchObject([{ reason: 'free-test' }]);
    expect(found('form | chelated\nreads | free')).toMatchObject([{ reason: 'free-test' }]);
  });

  it.each([
    'form | sulfate\nmeter accuracy | 0.02\nmeter from | 0.05',
    'form | chelated\nmeter accuracy | 0.05\nmeter percent | 5%',
    'form | sulfate\nreads | free',
    'form | chelated\nreads | total',
    'band | 2\nmeter accuracy | 0.2',
    'form | sulfate',
  ])('is silent about %j', (terms) => {
    expect(found(terms)).toEqual([]);
  });
});
