import { fishSignsFirst } from '../../../src/engine/rules/fishSignsFirst.js';
import { treatmentFrom } from './treatmentFrom.js';

const card = 'volume | 200 L\nform | chelated';

describe('fishSignsFirst', () => {
  const first = (log: string, on = card): unknown[] =>
    fishSignsFirst.find(treatmentFrom(log, on), new Set()).map(({ code, severity, row }) => [code, severity, row]);

  it.each(['not eating', 'breathing heavily', 'flashing'])('notes the first row that says %j', (sign) => {
    expect(first(`Date | Copper | Signs\n2026-03-01 | 2.25 | eating\n2026-03-05 | 2.25 | ${sign}`)).toEqual([
      ['first-signs', 'note', 3],
    ]);
  });

  it('is silent about well fish, unread words and not eating on the day of arrival', () => {
    expect(first('Date | Copper | Signs\n2026-03-01 | 2.25 | eating')).toEqual([]);
    expect(first('Date | Copper | Signs\n2026-03-01 | 2.25 | purple')).toEqual([]);
    expect(first('Date | Copper | Signs\n2026-03-01 | 2.25 | not eating', `${card}\narrived | 2026-03-01`)).toEqual([]);
  });

  it('reads in the notes that fish breathe badly or do not eat, beside a column of signs too', () => {
    expect(first('Date | Copper | Notes\n2026-03-01 | 2.25 | matched\n2026-03-05 | 2.25 | tang gasping')).toEqual([
      ['first-signs', 'note', 3],
    ]);
    expect(first('Date | Copper | Eating? | Notes\n2026-03-05 | 2.25 | yes | two gasping')).toEqual([
      ['first-signs', 'note', 2],
    ]);
    expect(first('Date | Copper | Notes\n2026-03-01 | 2.25 | meter flashing')).toEqual([]);
  });
});
