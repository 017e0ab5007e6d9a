import type { Finding } from '../../../src/engine/rules/finding.js';
import { raisedTooFast } from '../../../src/engine/rules/raisedTooFast.js';
import { treatmentFrom } from './treatmentFrom.js';

const card = `volume | 200 L
form | chelated
strength | 10 mg/mL`;

function found(rows: string, terms = '', named: readonly number[] = []): readonly Finding[] {
  const log = `Date | Copper | Dose mL | Notes\n${rows}`;
  return raisedTooFast.find(treatmentFrom(log, `${card}\n${terms}`), new Set(named));
}

const inOneDay = `2026-03-01 08:00 | 0 | 11 |
2026-03-01 12:00 | | 11 |
2026-03-01 16:00 | | 11 |
2026-03-01 20:00 | 1.65 | 10 |
2026-03-02 07:00 | 2.15 | |`;

describe('raisedTooFast', () => {
  it('warns of the band reached in under 24 h from under a tenth of the low limit', () => {
    expect(found(inOneDay)).toMatchObject([
      { code: 'raised-too-fast', severity: 'warning', row: 6, from: 0, level: 2.15, hours: expect.closeTo(23, 6) },
    ]);
  });

  it('counts from the first dose, not from a baseline days before', () => {
    expect(found(`2026-02-26 08:00 | 0 | |\n${inOneDay.replace('| 0 |', '| |')}`)).toMatchObject([
      { code: 'raised-too-fast', row: 7, hours: expect.closeTo(23, 6) },
    ]);
  });

  it('finds it in a log without doses', () => {
    expect(found('2026-03-01 08:00 | <0.1 | |\n2026-03-02 | 2.0 | |')).toMatchObject([{ row: 3 }]);
  });

  it('warns of one dose that raises by more than a quarter of the aim', () => {
    expect(found('2026-03-01 08:00 | 1 | 14 |\n2026-03-01 12:00 | 1.7 | 11.3 |')).toMatchObject([
      { code: 'dose-too-large', severity: 'warning', row: 2, dose: 14, rise: 0.7, most: 11.25 },
    ]);
  });

  it('warns of more than half when urgent', () => {
    const rows = '2026-03-01 08:00 | 0 | 22 |\n2026-03-01 20:00 | 1.1 | 24 |';
    expect(found(rows, 'pace | urgent')).toMatchObject([{ code: 'dose-too-large', row: 3, urgent: true }]);
    expect(found(rows, 'disease | velvet')).toMatchObject([{ row: 3 }]);
  });

  it('judges a dose by the volume of its day', () => {
    const rows = 'Date | Copper | Dose mL | Volume L\n2026-03-01 08:00 | 1 | 11 | 100';
    expect(raisedTooFast.find(treatmentFrom(rows, card), new Set())).toMatchObject([{ row: 2, rise: 1.1 }]);
  });

  it.each([
    ['an urgent raise', inOneDay, 'pace | urgent'],
    ['disease on the card', inOneDay, 'disease | white spot'],
    ['disease in a note', inOneDay.replace('| 11 |', '| 11 | velvet on the clownfish'), ''],
    ['24 h', inOneDay.replace('2026-03-02 07', '2026-03-02 08'), ''],
    [
      'four days',
      '2026-03-01 08:00 | 0 | 11 |\n2026-03-02 08:00 | 0.55 | 11 |\n2026-03-03 08:00 | 1.1 | 11 |\n2026-03-04 08:00 | 1.65 | 11 |\n2026-03-05 08:00 | 2.2 | |',
      '',
    ],
    ['a raise that began well under way', '2026-03-01 08:00 | 0.3 | |\n2026-03-01 20:00 | 2.1 | |', ''],
    ['the rounding of a dose', '2026-03-01 08:00 | 1 | 11.3 |', ''],
  ])('is silent about %s', (_, rows, terms) => {
    expect(found(rows, terms)).toEqual([]);
  });

  it('still warns where a note says that there is no disease', () => {
    expect(found(inOneDay.replace('| 11 |', '| 11 | no white spot seen'))).toMatchObject([{ row: 6 }]);
  });

  it('is silent about rows that are named', () => {
    expect(
      found('2026-03-01 08:00 | 2.2 | |\n2026-03-01 12:00 | 0.02 | 14 |\n2026-03-02 08:00 | 2.2 | |', '', [3]),
    ).toEqual([]);
  });
});
