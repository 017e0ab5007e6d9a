import { secondSigns } from '../../../src/engine/rules/secondSigns.js';
import { treatmentFrom } from './treatmentFrom.js';

const card = 'volume | 200 L\nform | chelated';
const found = (log: string, on = card): unknown[] =>
  secondSigns.find(treatmentFrom(log, on), new Set()).map(({ code, severity, row }) => [code, severity, row]);

describe('secondSigns', () => {
  it('is a danger after a recorded recovery, at the first row of the second time', () => {
    const log = `Date | Copper | Signs
2026-03-01 | 2.25 | not eating
2026-03-02 | 2.25 | eating well
2026-03-04 | 2.25 | lethargic
2026-03-05 | 2.25 | lethargic`;
    expect(found(log)).toEqual([['second-signs', 'danger', 4]]);
  });

  it('is a danger after three clear days', () => {
    expect(found('Date | Copper | Signs\n2026-03-01 | 2.25 | flashing\n2026-03-08 | 2.25 | flashing')).toEqual([
      ['second-signs', 'danger', 3],
    ]);
  });

  it('names the row of the first time', () => {
    const log = `Date | Copper | Eating?
2026-03-01 | 2.25 | no
2026-03-02 | 2.25 | yes
2026-03-04 | 2.25 | no`;
    const [finding] = secondSigns.find(treatmentFrom(log, card), new Set());
    expect(finding).toMatchObject({ code: 'second-signs', row: 4, first: { row: 2 } });
  });

  it('is silent about one episode', () => {
    expect(found('Date | Copper | Signs\n2026-03-01 | 2.25 | flashing\n2026-03-02 | 2.25 | flashing')).toEqual([]);
    expect(found('Date | Copper | Signs\n2026-03-01 | 2.25 | flashing\n2026-03-02 | 2.25 | eating')).toEqual([]);
    expect(found('Date | Copper\n2026-03-01 | 2.25')).toEqual([]);
  });

  it('does not count what was seen before any copper was in the water', () => {
    const log = (copper: number): string => `Date | Copper | Signs
2026-03-01 15:00 | ${copper} | flashing
2026-03-03 18:00 | 2.25 | eating
2026-03-08 08:00 | 2.25 | not eating`;
    expect(found(log(0))).toEqual([]);
    expect(found(log(2.25))).toEqual([['second-signs', 'danger', 4]]);
  });

  it('does not count not eating on the day of arrival', () => {
    const log = (first: string): string => `Date | Copper | Fish in | Signs
2026-03-01 15:00 | 2.25 | yellow tang | ${first}
2026-03-02 18:00 | 2.25 | | eating
2026-03-06 08:00 | 2.25 | | not eating`;
    expect(found(log('not eating'))).toEqual([]);
    expect(found(log('not eating, breathing heavily'))).toEqual([['second-signs', 'danger', 4]]);
    const onCard = `Date | Copper | Signs
2026-03-01 20:00 | 2.25 | not eating
2026-03-02 18:00 | 2.25 | eating
2026-03-06 08:00 | 2.25 | not eating`;
    expect(found(onCard, `${card}\narrived | 2026-03-01`)).toEqual([]);
    expect(found(onCard)).toEqual([['second-signs', 'danger', 4]]);
  });
});
