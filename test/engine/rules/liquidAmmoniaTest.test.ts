import { liquidAmmoniaTest } from '../../../src/engine/rules/liquidAmmoniaTest.js';
import { treatmentFrom } from './treatmentFrom.js';

const card = 'volume | 200 L\nform | chelated';
const found = (log: string): unknown[] =>
  liquidAmmoniaTest.find(treatmentFrom(log, card), new Set()).map(({ code, severity, row }) => [code, severity, row]);
const noted = (note: string): unknown[] =>
  found(`Date | Copper | Note\n2026-03-01 | 2.25 |\n2026-03-02 | 2.25 | ${note}`);

describe('liquidAmmoniaTest', () => {
  it('notes once an ammonia number under copper', () => {
    expect(
      found('Date | Copper | Ammonia\n2026-03-01 | 2.25 | 0\n2026-03-02 | 2.25 | 0.25\n2026-03-03 | 2.25 | 0.5'),
    ).toEqual([['liquid-ammonia-test', 'note', 3]]);
  });

  it.each(['liquid ammonia test 0.25', 'ammonia drop test reads 0.5', 'NH3 by reagent kit: 0.25'])(
    'notes %j',
    (note) => {
      expect(noted(note)).toEqual([['liquid-ammonia-test', 'note', 3]]);
    },
  );

  it.each([
    'ammonia 0 on the in-tank indicator',
    'no liquid ammonia test used',
    'liquid food fed',
    'dropped the net',
    '',
  ])('is silent about %j', (note) => {
    expect(noted(note)).toEqual([]);
  });

  it('is silent where no copper is in the water, and about an indicator', () => {
    expect(found('Date | Copper | Ammonia\n2026-03-01 | 0 | 0.25')).toEqual([]);
    expect(found('Date | Copper | Ammonia | Note\n2026-03-01 | 2.25 | 0.02 | in-tank indicator')).toEqual([]);
  });
});
