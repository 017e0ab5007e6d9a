import type { Finding } from '../../../src/engine/rules/finding.js';
import { newcomer } from '../../../src/engine/rules/newcomer.js';
import { dailyLog, days } from './dailyLog.js';
import { treatmentFrom } from './treatmentFrom.js';

const card = `volume | 200 L
form | chelated`;

function found(cells: readonly (string | number)[], terms = ''): readonly Finding[] {
  return newcomer.find(
    treatmentFrom(dailyLog('Date | Copper | Fish in | Notes', cells), `${card}\n${terms}`),
    new Set(),
  );
}

describe('newcomer', () => {
  it('warns of fish that came in during the hold', () => {
    expect(found([...days(5), '2.25 | royal gramma', ...days(3)])).toMatchObject([
      { code: 'newcomer', severity: 'warning', row: 7, day: 6, fish: 'royal gramma', restart: false },
    ]);
  });

  it('says that all start again where the card does, or where disease is noted on it', () => {
    const cells = [...days(5), '2.25 | 2', ...days(3)];
    expect(found(cells, 'newcomers | restart')).toMatchObject([{ row: 7, restart: true }]);
    expect(found(cells, 'disease | white spot')).toMatchObject([{ row: 7, restart: true }]);
    expect(found(cells, 'disease | white spot\nnewcomers | count on')).toMatchObject([{ restart: false }]);
  });

  it.each(['new fish today', 'newcomer: dottyback', 'added two fish', 'fish added'])('reads %j in a note', (note) => {
    expect(found([...days(5), `2.25 | | ${note}`, ...days(3)])).toMatchObject([{ row: 7 }]);
  });

  it.each([
    ['fish that came before the hold', ['0 | tang', '1.2 | gramma', ...days(4)]],
    ['fish that came as the hold began', ['0', '2.25 | tang', ...days(4)]],
    ['fish after enough days', [...days(31), '2.25 | tang']],
    ['fish after the copper', [...days(31), 0.1, '0 | tang']],
    ['nobody', [...days(4), '2.25 | none', '2.25 | 0', '2.25 | -']],
    ['notes of other things', [...days(4), '2.25 | | no new fish', '2.25 | | new fish food', '2.25 | | added water']],
  ])('is silent about %s', (_, cells) => {
    expect(found(cells)).toEqual([]);
  });

  it('is silent about the fish that the card says arrived then', () => {
    expect(found([...days(4), '2.25 | tang', ...days(3)], 'arrived | 2026-03-05 08:00')).toEqual([]);
  });
});
