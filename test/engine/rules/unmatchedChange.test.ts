import { unmatchedChange } from '../../../src/engine/rules/unmatchedChange.js';
import { chelatedCard, findingsBy, foundBy, raisedLog } from './raisedLog.js';

const days = (...lines: readonly string[]): string =>
  `${raisedLog}${lines.map((line) => `  2026-03-${line}\n`).join('')}`;

describe('unmatchedChange', () => {
  it('warns of a change that dilutes the copper', () => {
    expect(foundBy(unmatchedChange, days('08 09:00 | 2.25 | | 20 |', '09 08:00 | 2.02 |'))).toEqual([
      'warning 9 unmatched-change',
    ]);
  });

  it('is a danger where it takes the level below the low limit', () => {
    const log = days('08 09:00 | 2.25 | | 80 |', '09 08:00 | 1.35 |', '10 08:00 | 1.35 | 18', '11 08:00 | 2.25 |');
    expect(foundBy(unmatchedChange, log)).toEqual(['danger 9 unmatched-change']);
    expect(findingsBy(unmatchedChange, log)[0]).toMatchObject({ litres: 80, low: 1.95, saysMatched: false });
    expect(foundBy(unmatchedChange, days('08 09:00 | 2.25 | | 80 |'))).toEqual(['danger 9 unmatched-change']);
  });

  it('does not believe "matched" where the next reading does not agree', () => {
    const log = days('08 09:00 | 2.25 | | 80 | | matched', '09 08:00 | 1.35 |', '10 08:00 | 1.36 |');
    expect(foundBy(unmatchedChange, log)).toEqual(['danger 9 unmatched-change']);
  });

  it('is a warning where the next reading shows that the water was matched', () => {
    const log = days('08 09:00 | 2.25 | | 80 |', '09 08:00 | 2.24 |', '10 08:00 | 2.25 |');
    expect(findingsBy(unmatchedChange, log)[0]).toMatchObject({
      severity: 'warning',
      row: 9,
      shownMatched: { row: 10 },
    });
  });

  it.each([
    [
      'said to be matched, and the next reading agrees',
      days('08 09:00 | 2.25 | | 80 | | matched', '09 08:00 | 2.24 |'),
    ],
    ['said to be premixed, without a reading after it', days('08 09:00 | 2.25 | | 80 | | premixed to the tank')],
    ['with the dose for the new water in its row', days('08 09:00 | 2.25 | 18 | 80 |', '09 08:00 | 2.25 |')],
    ['too small to matter', days('08 09:00 | 2.25 | | 2 |')],
    [
      'that lowers a level from above the band',
      days('08 09:00 | 2.8 | | 40 |', '09 08:00 | 2.24 |', '10 08:00 | 2.25 |'),
    ],
    [
      'by which copper is taken out',
      days('08 09:00 | 2.25 | | 100 |', '09 08:00 | 1.12 | | 100 |', '10 08:00 | 0.56 | | 100 |', '11 08:00 | 0.28 |'),
    ],
    ['that says so', days('08 09:00 | 2.25 | | 100 | | lowering the copper', '09 08:00 | 1.12 |')],
  ])('leaves a change alone %s', (_, log) => {
    expect(foundBy(unmatchedChange, log)).toEqual([]);
  });

  describe('without a strength on the card', () => {
    const card = chelatedCard.replace(/ *strength.*\n/, '');

    it.each([
      ['no dose between its two readings', days('08 09:00 | 2.25 | | 80 |', '09 08:00 | 1.35 |'), 'danger 9'],
      ['no reading after it', days('08 09:00 | 2.25 | | 80 |'), 'danger 9'],
      ['a level that stays in the band', days('08 09:00 | 2.25 | | 20 |', '09 08:00 | 2.02 |'), 'warning 9'],
      ['a next reading that shows matched water', days('08 09:00 | 2.25 | | 80 |', '09 08:00 | 2.25 |'), 'warning 9'],
      ['"matched" that is not so', days('08 09:00 | 2.25 | | 80 | | matched', '09 08:00 | 1.35 |'), 'danger 9'],
      ['a row of its own', days('08 08:00 | 2.25 |', '08 09:00 | | | 80 |', '09 08:00 | 1.35 |'), 'danger 10'],
      [
        'the volume as last corrected',
        days('09 09:00 | 2.25 | | 20 |', '10 08:00 | 1.8 |').replace(
          / {2}when[^]*03-07 08:00 \| 2.25 .*/,
          'when | Cu | dose mL | WC L | volume L\n2026-03-07 08:00 | 2.25 | 3 | | 100',
        ),
        'danger 3',
      ],
    ])('finds a change with %s', (_, log, found) => {
      expect(foundBy(unmatchedChange, log, card)).toEqual([`${found} unmatched-change`]);
    });

    it.each([
      ['with a dose before the next reading', days('08 09:00 | 2.25 | | 80 |', '08 10:00 | | 18', '09 08:00 | 2.25 |')],
      ['said to be matched, and so it was', days('08 09:00 | 2.25 | | 80 | | matched', '09 08:00 | 2.24 |')],
      ['too small to matter', days('08 09:00 | 2.25 | | 2 |')],
      [
        'by which copper is taken out',
        days('08 09:00 | 2.25 | | 100 |', '09 08:00 | 1.12 | | 100 |', '10 08:00 | 0.56 | | 100 |'),
      ],
    ])('leaves a change alone %s', (_, log) => {
      expect(foundBy(unmatchedChange, log, card)).toEqual([]);
    });
  });

  it('leaves changes alone once the days are held', () => {
    const held = Array.from({ length: 31 }, (_, day) => `${String(day + 1).padStart(2, '0')} 08:00 | 2.25 |`);
    const log = `when | Cu | dose | WC L\n${held.map((line) => ` 2026-03-${line}\n`).join('')} 2026-04-01 09:00 | 2.25 | | 100\n`;
    expect(foundBy(unmatchedChange, log)).toEqual([]);
  });
});
