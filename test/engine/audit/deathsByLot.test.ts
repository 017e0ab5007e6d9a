import { deathsByLot } from '../../../src/engine/audit/deathsByLot.js';
import { treatmentFrom } from '../rules/treatmentFrom.js';

const card = (fish = '-'): string => `volume | 200 L\nform | chelated\ndays | 5\nfish | ${fish}`;
const lots = (text: string, fish?: string): unknown[] => {
  const result = deathsByLot(treatmentFrom(text, card(fish)));
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value.map((each) => [
    each.lot,
    each.cameIn,
    each.deadOnArrival,
    each.raising,
    each.hold,
    each.observation,
    each.left,
    each.percentAfterArrival,
  ]);
};

describe('deathsByLot', () => {
  it('puts each death into its phase', () => {
    const text = `Date | Copper | Fish in | Dead
2026-03-01 | 0 | 20 anthias, 2 DOA |
2026-03-02 | 1.0 | | 1
2026-03-03 | 2.25 | |
2026-03-04 | 2.25 | | 2 anthias
2026-03-06 | 2.25 | |
2026-03-08 | 2.25 | |
2026-03-09 | 0.5 | | 3
2026-03-10 | 0.02 | | 1`;
    expect(lots(text)).toEqual([['all', 20, 2, 1, 2, 4, 11, (100 * 7) / 18]]);
  });

  it('keeps the lots apart, whatever their case', () => {
    const text = `Date | Copper | Lot | Fish in | Fish out | Dead
2026-03-01 | 2.25 | A | 10 | |
2026-03-02 | 2.25 | B | 5 chromis | |
2026-03-03 | 2.25 | a | | 4 | 1
2026-03-04 | 2.25 | B | | all |`;
    expect(lots(text)).toEqual([
      ['A', 10, 0, 0, 1, 0, 5, 10],
      ['B', 5, 0, 0, 0, 0, 0, 0],
    ]);
  });

  it('counts what died with its lot in the first row as dead on arrival', () => {
    expect(lots('Date | Copper | Fish in | Dead\n2026-03-01 | 0 | 20 | 4\n2026-03-02 | 0 | 5 | 1')).toEqual([
      ['all', 25, 4, 1, 0, 0, 20, 100 / 21],
    ]);
    expect(lots('Date | Copper | Fish in | DOA\n2026-03-01 | 0 | 20 | 4\n2026-03-02 | 0 | | 1')).toEqual([
      ['all', 20, 5, 0, 0, 0, 15, 0],
    ]);
    expect(lots('Date | Copper | Fish in | Dead\n2026-03-01 | 0 | 20, 4 DOA | 4 DOA')).toEqual([
      ['all', 20, 4, 0, 0, 0, 16, 0],
    ]);
  });

  it('a broken hold stays the hold', () => {
    const text = `Date | Copper | Fish in | Dead
2026-03-01 | 2.25 | 10 |
2026-03-02 | 1.8 | | 1
2026-03-03 | 2.25 | | 1`;
    expect(lots(text)).toEqual([['all', 10, 0, 0, 2, 0, 8, 20]]);
  });

  it('takes the fish of the card where no row brings them in, and says nothing where none does', () => {
    const text = 'Date | Copper | Dead\n2026-03-01 | 2.25 |\n2026-03-02 | 2.25 | 1';
    expect(lots(text, 'yellow tang, 4 chromis')).toEqual([['all', 5, 0, 0, 1, 0, 4, 20]]);
    expect(lots(text)).toEqual([['all', null, 0, 0, 1, 0, null, null]]);
    expect(lots('Date | Copper | Dead\n2026-03-01 | 2.25 |')).toEqual([]);
  });

  it('counts a death written in the column of fish that leave', () => {
    const text =
      'Date | Copper | Fish in | Fish out | Dead\n2026-03-01 | 2.25 | 10 | |\n2026-03-02 | 2.25 | | 1 dead |';
    expect(lots(text)).toEqual([['all', 10, 0, 0, 1, 0, 9, 10]]);
  });

  it('refuses a log without deaths, and the lowest row without a number', () => {
    expect(deathsByLot(treatmentFrom('Date | Copper\n2026-03-01 | 2.25', card()))).toEqual({
      ok: false,
      problem: { code: 'missing-heading', kind: 'dead' },
    });
    const text =
      'Date | Copper | Fish in | Dead\n2026-03-01 | 2.25 | 5 | \n2026-03-02 | LOW | | some\n2026-03-03 | 2.2 | tangs |';
    expect(deathsByLot(treatmentFrom(text, card()))).toMatchObject({
      ok: false,
      problem: { code: 'not-a-value', at: { row: 3 }, kind: 'fish count' },
    });
  });
});
