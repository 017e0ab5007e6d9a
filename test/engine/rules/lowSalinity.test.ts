import { lowSalinity } from '../../../src/engine/rules/lowSalinity.js';
import { treatmentFrom } from './treatmentFrom.js';

const card = `volume | 200 L
form | chelated`;
const rows = (log: string, on = card): unknown[] =>
  lowSalinity.find(treatmentFrom(log, on), new Set()).map(({ code, severity, row }) => [code, severity, row]);

describe('lowSalinity', () => {
  it('warns below 25 g/kg, once for a stretch', () => {
    const log = `Date | Copper | Salinity
2026-03-01 | 2.25 | 33
2026-03-02 | 2.25 | 24.5
2026-03-03 | 2.25 | 24
2026-03-04 | 2.25 | 33
2026-03-05 | 2.25 | 24`;
    expect(rows(log)).toEqual([
      ['low-salinity', 'warning', 3],
      ['low-salinity', 'warning', 6],
    ]);
  });

  it('is a danger below 20, at the row where it gets there', () => {
    const log = `Date | Copper | Salinity
2026-03-01 | 2.25 | 24
2026-03-02 | 2.25 | 19
2026-03-03 | 2.25 | 18`;
    expect(rows(log)).toEqual([
      ['low-salinity', 'warning', 2],
      ['low-salinity', 'danger', 3],
    ]);
  });

  it('reads specific gravity', () => {
    expect(rows('Date | Copper | SG\n2026-03-01 | 2.25 | 1.012')).toEqual([['low-salinity', 'danger', 2]]);
  });

  it('takes the card where the log has no salinity', () => {
    expect(rows('Date | Copper\n2026-03-01 | 2.25', `${card}\nsalinity | 18`)).toEqual([
      ['low-salinity', 'danger', null],
    ]);
  });

  it.each(['hyposalinity started', 'fish in hypo since Monday', 'low-salinity treatment, SG 1.009'])(
    'is a danger with %j',
    (note) => {
      expect(rows(`Date | Copper | Note\n2026-03-01 | 2.25 |\n2026-03-02 | 2.25 | ${note}`)).toEqual([
        ['low-salinity-treatment', 'danger', 3],
      ]);
    },
  );

  it.each(['no hyposalinity', 'hyposalinity not used', 'salinity low, added salt', 'hypochlorite rinse of the nets'])(
    'is silent about %j',
    (note) => {
      expect(rows(`Date | Copper | Note\n2026-03-01 | 2.25 |\n2026-03-02 | 2.25 | ${note}`)).toEqual([]);
    },
  );

  it('is silent at the limits, in the sea, and before or after the copper', () => {
    expect(rows('Date | Copper | Salinity\n2026-03-01 | 2.25 | 25\n2026-03-02 | 2.25 | 35')).toEqual([]);
    expect(rows('Date | Copper | Salinity | Dose\n2026-03-01 | 0 | 18 |\n2026-03-02 | 0 | 33 | 5')).toEqual([]);
    expect(rows('Date | Copper | Salinity\n2026-03-01 | 2.25 | 33\n2026-04-02 | <0.05 | 18')).toEqual([]);
    expect(rows('Date | Copper | Salinity\n2026-03-01 | 2.25 | 33\n2026-03-02 | 2.25 | 0')).toEqual([]);
    expect(rows('Date | Copper | Salinity\n2026-03-01 | 2.25 | 33', `${card}\nsalinity | 18`)).toEqual([]);
  });
});
