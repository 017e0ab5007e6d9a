import { unexplainedReading } from '../../../src/engine/rules/unexplainedReading.js';
import { chelatedCard, findingsBy, foundBy, raisedLog } from './raisedLog.js';
import { treatmentFrom } from './treatmentFrom.js';

const days = (...lines: readonly string[]): string =>
  `${raisedLog}${lines.map((line) => `  2026-03-${line}\n`).join('')}`;

describe('unexplainedReading', () => {
  it('finds a reading that the next ones do not agree with', () => {
    const log = days('08 08:00 | 3.1 |', '09 08:00 | 2.25 |', '10 08:00 | 2.24 |');
    expect(foundBy(unexplainedReading, log)).toEqual(['warning 9 unexplained-reading']);
    expect(findingsBy(unexplainedReading, log)[0]).toMatchObject({ written: 3.1, then: 'goes back' });
  });

  it('finds a level that went where nothing in the log took it', () => {
    const log = days('08 08:00 | 2.9 |', '09 08:00 | 2.9 |', '10 08:00 | 2.9 |');
    expect(findingsBy(unexplainedReading, log)[0]).toMatchObject({ severity: 'warning', row: 9, then: 'stays' });
  });

  it('finds a last reading far off, and a dose that raised nothing', () => {
    expect(findingsBy(unexplainedReading, days('08 08:00 | 1.6 |'))[0]).toMatchObject({ row: 9, then: 'last' });
    const log = raisedLog.replace(/1\.68 |2\.2\d /g, '1.13 ');
    expect(foundBy(unexplainedReading, log)).toEqual(['warning 5 unexplained-reading']);
  });

  it('gives the rows of the further ones', () => {
    const log = days(
      '08 08:00 | 3.1 |',
      '09 08:00 | 2.25 |',
      '10 08:00 | 2.24 |',
      '11 08:00 | 1.4 |',
      '12 08:00 | 2.25 |',
    );
    expect(findingsBy(unexplainedReading, log)[0]).toMatchObject({ row: 9, further: [12] });
  });

  it.each([
    ['a raise and a hold', raisedLog],
    ['readings within the error of the meter', days('08 08:00 | 2.3 |', '09 08:00 | 2.2 |', '10 08:00 | 2.27 |')],
    ['a dose and the rise it gives', days('08 08:00 | 2.25 | 5', '09 08:00 | 2.49 |')],
    ['a change and the fall it gives', days('08 08:00 | 2.25 | | 40 |', '09 08:00 | 1.81 |')],
    ['a raise without doses in the log', raisedLog.replace(/11\.\d/g, '')],
  ])('finds none in %s', (_, log) => {
    expect(foundBy(unexplainedReading, log)).toEqual([]);
  });

  it('finds none where a cause is named since the reading before', () => {
    const treatment = treatmentFrom(days('08 08:00 | 3.1 |', '09 08:00 | 2.25 |', '10 08:00 | 2.24 |'), chelatedCard);
    expect(unexplainedReading.find(treatment, new Set([9]))).toEqual([]);
    expect(unexplainedReading.find(treatment, new Set([8]))).toEqual([]);
    expect(unexplainedReading.find(treatment, new Set([7]))).toHaveLength(1);
  });
});
