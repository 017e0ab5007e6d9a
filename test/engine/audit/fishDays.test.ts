import { fishDays } from '../../../src/engine/audit/fishDays.js';
import { holdDays } from '../../../src/engine/hold/holdDays.js';
import { holdEnds } from '../../../src/engine/hold/holdEnds.js';
import { treatmentFrom } from '../rules/treatmentFrom.js';

const card = (more = ''): string => `volume | 200 L\nform | chelated\n${more}`;
/** A reading a day at 08:00 from 2026-03-01, with what else a day's row says. */
function log(days: number, said: Readonly<Record<number, string>> = {}, level = 2.25): string {
  const rows = Array.from({ length: days }, (_, day) => {
    const date =
      day < 31 ? `2026-03-${String(day + 1).padStart(2, '0')}` : `2026-04-${String(day - 30).padStart(2, '0')}`;
    return `${date} 08:00 | ${level} | ${said[day + 1] ?? ' | | '}`;
  });
  return ['Date | Copper | Fish in | Fish out | Dead', ...rows].join('\n');
}
const start = 46082 + 8 / 24;
const rows = (text: string, more = '', asOf?: string) => {
  const result = fishDays(treatmentFrom(text, card(more), asOf));
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value.map(({ fish, arrived, holdDays, readyOn }) => [fish, arrived, holdDays, readyOn]);
};

describe('fishDays', () => {
  it('counts from the arrival, or from the start of the hold where that is later', () => {
    const text = log(11, { 1: 'yellow tang | | ', 5: '2 clownfish | | ' });
    expect(rows(text)).toEqual([
      ['yellow tang', start, 10, start + 30],
      ['2 clownfish', start + 4, 6, start + 34],
    ]);
  });

  it('gives fish of the card its arrival, and no days without one', () => {
    expect(rows(log(11), 'fish | yellow tang, clownfish pair\narrived | 2026-03-03')).toEqual([
      ['yellow tang', 46084, start + 10 - 46084, 46114],
      ['clownfish pair', 46084, start + 10 - 46084, 46114],
    ]);
    expect(rows(log(11), 'fish | yellow tang')).toEqual([['yellow tang', null, null, null]]);
  });

  it('takes a fish of the card that a row brings in as one fish', () => {
    const text = log(11, { 5: 'Yellow Tang | | ' });
    expect(rows(text, 'fish | yellow tang, clownfish')).toEqual([
      ['clownfish', null, null, null],
      ['Yellow Tang', start + 4, 6, start + 34],
    ]);
  });

  it('ends where a fish is moved, sold or dead', () => {
    const text = log(11, {
      1: 'yellow tang, clownfish, wrasse, 5 chromis | | ',
      4: ' | tang (sold) | ',
      6: ' | | wrasse',
      8: ' | clownfish moved | ',
    });
    expect(rows(text)).toEqual([
      ['yellow tang', start, 3, null],
      ['clownfish', start, 7, null],
      ['wrasse', start, 5, null],
      ['5 chromis', start, 10, start + 30],
    ]);
  });

  it('credits at most 36 h to the moment a fish left, as HOLDDAYS does', () => {
    const text = `Date | Copper | Fish in | Fish out
2026-03-01 08:00 | 2.25 | tang |
2026-03-02 08:00 | 2.25 | |
2026-03-05 08:00 | | | tang`;
    expect(rows(text)).toEqual([['tang', start, 2.5, null]]);
  });

  it('keeps the date on which a fish that left had its days', () => {
    const text = log(36, { 1: 'tang | | ', 35: ' | tang moved | ' });
    expect(rows(text)).toEqual([['tang', start, 34, start + 30]]);
  });

  it('takes single fish off a group until none is left', () => {
    const text = log(6, { 1: '3 chromis | | ', 3: ' | | 1', 4: ' | | 2' });
    expect(rows(text)).toEqual([['3 chromis', start, 3, null]]);
    expect(rows(log(6, { 1: '3 chromis | | ', 3: ' | | 1' }))).toEqual([['3 chromis', start, 5, start + 30]]);
  });

  it('does not guess which fish a bare number means', () => {
    const text = log(6, { 1: 'tang, wrasse | | ', 3: ' | | 1' });
    const result = fishDays(treatmentFrom(text, card()));
    expect(rows(text).map(([, , days]) => days)).toEqual([5, 5]);
    expect(result.ok && result.value.map(({ events }) => events[0]?.unclear)).toEqual([true, true]);
  });

  it('ends all where all leave', () => {
    const text = log(6, { 1: 'tang, 4 chromis | | ', 4: ' | all | ' });
    expect(rows(text).map(([, , days, ready]) => [days, ready])).toEqual([
      [3, null],
      [3, null],
    ]);
  });

  it('gives no days to fish dead on arrival', () => {
    expect(rows(log(6, { 1: 'tang DOA, 4 chromis, 1 DOA | | ' }))).toEqual([
      ['tang DOA', start, null, null],
      ['4 chromis', start, 5, start + 30],
    ]);
  });

  it('restarts everyone with a newcomer only where the card says so', () => {
    const text = log(11, { 1: 'tang | | ', 5: 'wrasse | | ' });
    expect(rows(text).map(([, , days]) => days)).toEqual([10, 6]);
    expect(rows(text, 'newcomers | restart').map(([, , days]) => days)).toEqual([6, 6]);
    expect(rows(text, 'disease | velvet').map(([, , days]) => days)).toEqual([6, 6]);
    const late = log(36, { 1: 'tang | | ', 35: 'wrasse | | ' });
    expect(rows(late, 'newcomers | restart').map(([, , days]) => days)).toEqual([35, 1]);
  });

  it('goes to as of', () => {
    const text = log(11, { 1: 'tang | | ', 8: 'wrasse | | ' });
    expect(rows(text, '', '2026-03-05 20:00')).toEqual([['tang', start, 4.5, start + 30]]);
  });

  it('has 0 days and no date where no hold runs, no days where there is no test', () => {
    expect(rows(log(5, { 1: 'tang | | ' }, 1.2))).toEqual([['tang', start, 0, null]]);
    expect(rows('Date | Copper | Fish in\n2026-03-01 | | tang')).toEqual([['tang', 46082, null, null]]);
  });

  it('lists nothing where no fish is named', () => {
    expect(rows(log(3))).toEqual([]);
  });

  it('refuses a row that cannot be read, the lowest', () => {
    const text = 'Date | Copper | Fish in\n2026-03-01 | LOW | tang\n2026-03-02 | ok |';
    expect(fishDays(treatmentFrom(text, card()))).toMatchObject({
      ok: false,
      problem: { code: 'not-a-reading', at: { row: 2 } },
    });
  });

  it('agrees with the hold functions for any arrival and any moment', () => {
    for (let arrivalDay = 1; arrivalDay <= 36; arrivalDay += 5) {
      for (const broken of [0, 4, 20]) {
        for (const asOf of ['2026-03-20 20:00', '2026-04-05 21:00']) {
          const rowsOfLog = log(36, { [arrivalDay]: 'tang | | ' }).split('\n');
          const text = rowsOfLog.map((row, n) => (n === broken && n > 0 ? row.replace('2.25', '1.5') : row)).join('\n');
          const treatment = treatmentFrom(text, card(), asOf);
          const found = fishDays(treatment);
          if (!found.ok) throw new Error(found.problem.code);
          const terms = { ...treatment.terms, arrived: start + arrivalDay - 1 };
          const days = holdDays(treatment.trace, terms);
          const ends = holdEnds(treatment.trace, terms, 30);
          const expected = { holdDays: days.ok ? days.value : null, readyOn: ends.ok ? ends.value : null };
          const [tang] = found.value;
          if (tang !== undefined) expect(tang.holdDays).toBeCloseTo(expected.holdDays ?? NaN, 9);
          if (tang !== undefined && expected.readyOn === null) expect(tang.readyOn).toBeNull();
          if (tang !== undefined && expected.readyOn !== null) expect(tang.readyOn).toBeCloseTo(expected.readyOn, 9);
        }
      }
    }
    expect.hasAssertions();
  });
});
