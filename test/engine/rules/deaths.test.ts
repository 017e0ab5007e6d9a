import { deaths } from '../../../src/engine/rules/deaths.js';
import { treatmentFrom } from './treatmentFrom.js';

const card = (fish = '-'): string => `volume | 200 L\nform | chelated\nfish | ${fish}`;
const rows = (log: string, fish?: string): unknown[] =>
  deaths.find(treatmentFrom(log, card(fish)), new Set()).map(({ code, severity, row }) => [code, severity, row]);

describe('deaths', () => {
  it('is a danger at three in an entry', () => {
    expect(rows('Date | Copper | Dead\n2026-03-01 | 2.25 |\n2026-03-02 | 2.25 | 3')).toEqual([['deaths', 'danger', 3]]);
  });

  it('is a danger at the third within 24 hours, to within a second', () => {
    const log = (last: string): string => `Date | Copper | Dead
2026-03-02 08:00 | 2.25 | 1
2026-03-02 20:00 | 2.25 | 1
${last} | 2.25 | 1`;
    expect(rows(log('2026-03-03 07:00'))).toEqual([
      ['death-noted', 'note', 2],
      ['death-noted', 'note', 3],
      ['deaths', 'danger', 4],
    ]);
    expect(rows(log('2026-03-03 08:00')).map((row) => (row as string[])[1])).toEqual(['note', 'note', 'danger']);
    expect(rows(log('2026-03-03 08:01')).map((row) => (row as string[])[1])).toEqual(['note', 'note', 'note']);
  });

  it('is a danger at a tenth of a lot', () => {
    const log = (died: string): string => `Date | Copper | Lot | Fish in | Dead
2026-03-01 | 2.25 | A | 20 anthias |
2026-03-01 | 2.25 | B | 60 chromis |
2026-03-05 | 2.25 | ${died}`;
    expect(rows(log('A | | 2'))).toEqual([['deaths', 'danger', 4]]);
    expect(rows(log('a | | 2'))).toEqual([['deaths', 'danger', 4]]);
    expect(rows(log('A | | 1'))).toEqual([['death-noted', 'note', 4]]);
    expect(rows(log('B | | 2'))).toEqual([['death-noted', 'note', 4]]);
  });

  it('is a danger at three over several lots', () => {
    const log = (last: string): string => `Date | Copper | Lot | Dead
2026-03-02 08:00 | 2.25 | A | 1
2026-03-02 20:00 | 2.25 | B | 1
${last} | 2.25 | C | 1`;
    const found = deaths.find(treatmentFrom(log('2026-03-03 08:00'), card()), new Set());
    expect(found.map(({ severity }) => severity)).toEqual(['note', 'note', 'danger']);
    expect(found[2]).toMatchObject({ row: 4, count: 3, lots: 3, of: null });
    expect(rows(log('2026-03-03 09:00')).map((row) => (row as string[])[1])).toEqual(['note', 'note', 'note']);
  });

  it('does not count what a danger has counted for another lot again', () => {
    const log = `Date | Copper | Lot | Dead
2026-03-02 08:00 | 2.25 | A | 3
2026-03-02 09:00 | 2.25 | B | 1
2026-03-02 10:00 | 2.25 | C | 1`;
    expect(rows(log).map((row) => (row as string[])[1])).toEqual(['danger', 'note', 'note']);
  });

  it('knows the size of a lot from the card', () => {
    const log = 'Date | Copper | Dead\n2026-03-01 | 2.25 |\n2026-03-02 | 2.25 | yellow tang';
    expect(rows(log, 'yellow tang, 4 x chromis')).toEqual([['deaths', 'danger', 3]]);
    expect(rows(log, 'yellow tang, 40 x chromis')).toEqual([['death-noted', 'note', 3]]);
  });

  it('keeps the dead on arrival apart', () => {
    expect(rows('Date | Copper | Fish in | Dead\n2026-03-01 | 0 | 20 anthias | 4')).toEqual([
      ['death-noted', 'note', 2],
    ]);
    expect(rows('Date | Copper | Dead\n2026-03-01 | 0 | 4 DOA')).toEqual([['death-noted', 'note', 2]]);
  });

  it('is silent where none died', () => {
    expect(
      rows('Date | Copper | Dead\n2026-03-01 | 2.25 | 0\n2026-03-02 | 2.25 | none\n2026-03-03 | 2.25 | -'),
    ).toEqual([]);
    expect(rows('Date | Copper\n2026-03-01 | 2.25')).toEqual([]);
    expect(rows('Date | Copper | Fish in | Fish out\n2026-03-01 | 2.25 | 5 | 3')).toEqual([]);
  });
});
