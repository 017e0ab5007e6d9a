import { strengthMissing } from '../../../src/engine/rules/strengthMissing.js';
import { findingText } from '../../../src/engine/text/findingText.js';
import { chelatedCard, foundBy, raisedLog } from './raisedLog.js';
import { treatmentFrom } from './treatmentFrom.js';

const without = chelatedCard.replace(/ *strength.*\n/, '');
const undosed = `
  when             | Cu   | dose mL | WC L
  2026-03-05 08:00 | 2.25 |         | 20
  2026-03-06 08:00 | 2.02 |         |
`;

describe('strengthMissing', () => {
  it.each([
    ['the first dose of several', raisedLog, 2],
    ['a dose after days without', `${undosed}  2026-03-07 08:00 | 2.02 | 4 |\n`, 4],
    ['a dose and no reading', 'when | Cu | dose mL\n2026-03-01 08:00 | | 5\n', 2],
  ])('is noted once, at %s', (_, log, row) => {
    expect(foundBy(strengthMissing, log, without)).toEqual([`note ${row} strength-missing`]);
  });

  it.each([
    ['a strength on the card', raisedLog, chelatedCard],
    ['a log without doses', undosed, without],
    ['a log with a dose of 0', `${undosed}  2026-03-07 08:00 | 2.02 | 0 |\n`, without],
  ])('is silent about %s', (_, log, card) => {
    expect(foundBy(strengthMissing, log, card)).toEqual([]);
  });

  it('says what is not looked for and where the strength comes from', () => {
    const [finding] = strengthMissing.find(treatmentFrom(raisedLog, without), new Set());
    expect(finding === undefined ? '' : findingText(finding).finding).toMatch(/no strength.*slips.*QT\.STRENGTH/);
  });
});
