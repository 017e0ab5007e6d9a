import { wrongForm } from '../../../src/engine/rules/wrongForm.js';
import { chelatedCard, findingsBy, foundBy, raisedLog } from './raisedLog.js';

const amineHold = `
  when             | Cu   | dose mL
  2026-03-01 08:00 | 0    | 5
  2026-03-02 08:00 | 0.24 | 5
  2026-03-03 08:00 | 0.5  |
  2026-03-04 08:00 | 0.5  |
  2026-03-05 08:00 | 0.49 |
  2026-03-06 08:00 | 0.5  |
  2026-03-07 08:00 | 0.5  |
`;

const slowRaise = `when | Cu | dose\n${Array.from(
  { length: 20 },
  (_, day) => ` 2026-03-${String(day + 1).padStart(2, '0')} 08:00 | ${(0.1 * day).toFixed(2)} | 2\n`,
).join('')}`;

describe('wrongForm', () => {
  it('finds readings of another form after the raise, at the third of them', () => {
    expect(foundBy(wrongForm, amineHold)).toEqual(['danger 7 wrong-form']);
    expect(findingsBy(wrongForm, amineHold)[0]).toMatchObject({
      side: 'below',
      levels: [0.5, 0.49, 0.5],
      fits: 'amine',
    });
  });

  it('finds readings over three times the top', () => {
    const card = chelatedCard.replace('chelated', 'sulfate');
    // 0.56 is not yet over 3 × 0.21; 1.12, 1.68 and 2.25 are.
    expect(foundBy(wrongForm, raisedLog, card)).toEqual(['danger 6 wrong-form']);
    const amine = chelatedCard.replace('chelated', 'amine');
    expect(findingsBy(wrongForm, `${raisedLog}`, amine)[0]).toMatchObject({ side: 'above', fits: 'chelated' });
  });

  it('finds them in a log without doses, once the level has stopped rising', () => {
    expect(foundBy(wrongForm, amineHold.replace(/\| 5$/gm, '|'))).toEqual(['danger 8 wrong-form']);
  });

  it('finds lows between readings in the band', () => {
    const log = `${raisedLog}
      2026-03-09 08:00 | 0.5  |
      2026-03-10 08:00 | 0.5  |
      2026-03-11 08:00 | 0.49 |
      2026-03-12 08:00 | 2.24 |
    `;
    expect(foundBy(wrongForm, log)).toEqual(['danger 11 wrong-form']);
  });

  it.each([
    ['a raise and a hold', raisedLog],
    [
      'lows after the last reading in the band',
      `${raisedLog}  2026-03-20 08:00 | 0.5 |\n  2026-03-21 08:00 | 0.4 |\n  2026-03-22 08:00 | 0.3 |`,
    ],
    [
      'a slow raise',
      'when | Cu | dose\n 2026-03-01 | 0 | 3\n 2026-03-02 | 0.15 | 3\n 2026-03-03 | 0.3 | 3\n 2026-03-04 | 0.45 | 3\n 2026-03-05 | 0.6 | 3',
    ],
    ['a raise of three weeks', slowRaise],
    ['water without copper', 'when | Cu\n 2026-03-01 | 0\n 2026-03-03 | 0\n 2026-03-05 | 0.01\n 2026-03-07 | 0'],
    ['two of them', `${raisedLog}  2026-03-09 08:00 | 0.5 |\n  2026-03-10 08:00 | 0.5 |\n  2026-03-12 08:00 | 2.24 |`],
  ])('finds none in %s', (_, log) => {
    expect(foundBy(wrongForm, log)).toEqual([]);
  });
});
