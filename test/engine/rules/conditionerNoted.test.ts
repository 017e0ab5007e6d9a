import { conditionerNoted } from '../../../src/engine/rules/conditionerNoted.js';
import { treatmentFrom } from './treatmentFrom.js';

const card = `volume | 200 L
form | chelated`;

/** Findings of a log with one note at row 3. */
function found(note: string): readonly unknown[] {
  const log = `Date | Copper | Notes
2026-03-01 08:00 | 2.25 |
2026-03-02 08:00 | 2.24 | ${note}
2026-03-03 08:00 | 2.26 | all fish in good condition`;
  return conditionerNoted.find(treatmentFrom(log, card), new Set());
}

describe('conditionerNoted', () => {
  it.each([
    'added water conditioner',
    'tap water conditioner, 5 mL',
    'dechlorinator in the new water',
    'used dechlor',
    'dechlorinated the new water',
    'ammonia binder added',
    'ammonia-binding bag in the filter',
    'detoxifier 10 mL',
    'sodium thiosulphate for the tap water',
    'chlorine remover',
    'no ammonia, conditioner added',
    'no signs; added conditioner',
    'not much flashing but added a detoxifying conditioner',
    'forgot the dose, put in conditioner',
    'ran out of premix, used conditioner instead',
  ])('raises a danger at the row of %j', (note) => {
    expect(found(note)).toEqual([expect.objectContaining({ code: 'conditioner-noted', severity: 'danger', row: 3 })]);
  });

  it.each([
    'no conditioner',
    'no water conditioner used',
    'without dechlorinator',
    'never use a dechlorinator here',
    "didn't add conditioner",
    'did not add any conditioner',
    'conditioner not used',
    'dechlorinator not needed, RO water',
    'conditioner: none',
    'conditioner-free water',
    'no carbon, resin or conditioner',
    'no carbon or ammonia binder',
    'RO water instead of conditioner',
    'fish in good condition',
    'air conditioner broke, 29 C',
    'conditions stable',
    'smell of chlorine in the tap water',
    'ammonia 0',
    '',
  ])('is silent about %j', (note) => {
    expect(found(note)).toEqual([]);
  });

  it('reads the column of signs too, and names every row', () => {
    const log = `Date | Copper | Signs | Notes
2026-03-01 08:00 | 2.25 | eating, added conditioner |
2026-03-02 08:00 | 2.25 | | conditioner again`;
    expect(conditionerNoted.find(treatmentFrom(log, card), new Set()).map(({ row }) => row)).toEqual([2, 3]);
  });

  it('is silent about a log without texts', () => {
    expect(conditionerNoted.find(treatmentFrom('Date | Copper\n2026-03-01 | 2.25', card), new Set())).toEqual([]);
  });
});
