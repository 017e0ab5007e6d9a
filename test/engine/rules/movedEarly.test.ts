import type { Finding } from '../../../src/engine/rules/finding.js';
import { movedEarly } from '../../../src/engine/rules/movedEarly.js';
import { dailyLog, days } from './dailyLog.js';
import { treatmentFrom } from './treatmentFrom.js';

const card = `volume | 200 L
form | chelated`;

function found(cells: readonly (string | number)[], terms = '', hours = 24): readonly Finding[] {
  const log = dailyLog('Date | Copper | Fish in | Fish out | Signs | Notes', cells, hours);
  return movedEarly.find(treatmentFrom(log, `${card}\n${terms}`), new Set());
}

describe('movedEarly', () => {
  it('is danger before 14 days of the hold', () => {
    expect(found([0, 1, ...days(8), '2.25 | | yellow tang', ...days(3)])).toMatchObject([
      { code: 'moved-early', severity: 'danger', row: 12, days: 8, fewest: 14, fish: 'yellow tang' },
    ]);
  });

  it('is danger while no hold runs', () => {
    expect(found([0, '1 | | 2'])).toMatchObject([{ severity: 'danger', row: 3, days: 0 }]);
    expect(found([...days(20), 1.8, '1.8 | | 2', ...days(3)])).toMatchObject([{ row: 23, days: 0 }]);
  });

  it('reads it in a note', () => {
    expect(found([...days(6), '2.25 | | | | moved fish to the display'])).toMatchObject([{ row: 8, days: 6 }]);
    expect(found([...days(6), '2.25 | | | | tang moved to observation'])).toMatchObject([{ row: 8 }]);
  });

  it('counts the days of a fish that came in later', () => {
    const cells = [...days(5), '2.25 | royal gramma', ...days(9), '2.25 | | Royal gramma'];
    expect(found(cells)).toMatchObject([{ row: 17, days: 10 }]);
  });

  it('warns after 14 days where a stretch was untested for over 48 h', () => {
    expect(found([...days(6), '', '', ...days(9), '2.25 | | 3'])).toMatchObject([
      { code: 'moved-against-terms', severity: 'warning', row: 19, days: 17, untested: 72, signs: null },
    ]);
  });

  it('warns after 14 days where the last seven were not without signs', () => {
    expect(found([...days(14), '2.25 | | | flashing', 2.25, '2.25 | | 3'])).toMatchObject([
      { severity: 'warning', row: 18, untested: null, signs: 2 },
    ]);
  });

  it.each([
    ['a move after 14 tested days without signs', [...days(15), '2.25 | | 3']],
    ['a move after 14 days exactly', [...days(14), '2.25 | | 3']],
    ['a move after the hold', [...days(31), 0.5, '0.1 | | 3']],
    ['nobody', [...days(5), '2.25 | | 0', '2.25 | | none', '2.25 | | -']],
    ['the dead', [...days(5), '2.25 | | 1 dead']],
    ['other things moved', [...days(5), '2.25 | | | | moved the heater', '2.25 | | | | fish eating, pump moved']],
    ['signs longer ago', [...days(4), '2.25 | | | flashing', '2.25 | | | fine', ...days(10), '2.25 | | 3']],
  ])('is silent about %s', (_, cells) => {
    expect(found(cells)).toEqual([]);
  });

  it('is silent where the copper was taken out first: that is named', () => {
    expect(found([...days(10), '2.25 | | | | copper removed', '1 | | 3'])).toEqual([]);
  });
});
