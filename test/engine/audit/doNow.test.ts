import { doNow } from '../../../src/engine/audit/doNow.js';
import { doNowTable } from '../../../src/engine/text/doNowTable.js';
import { treatmentFrom } from '../rules/treatmentFrom.js';

const card = `
  volume | 200 L
  form | chelated
  strength | 10 mg/mL
`;
const doing = (log: string, asOf: string, more = '') => {
  const treatment = treatmentFrom(log, card + more, asOf);
  return doNowTable(doNow(treatment), treatment.now).rows.map(([what, amount, unit]) =>
    [what, typeof amount === 'number' ? Math.round(amount * 100) / 100 : amount, unit].join(' ').trim(),
  );
};

describe('doNow', () => {
  it('asks for a test first where there is none', () => {
    expect(doing('When | Copper | Note\n2026-03-01 08:00 | | tank set up', '2026-03-01 09:00')).toEqual([
      'test copper',
    ]);
  });

  it('asks for a test alone where the last is too old: 12 h while raising, 6 h when urgent, 36 h in the hold', () => {
    const raising = 'When | Copper\n2026-03-01 08:00 | 1.0';
    expect(doing(raising, '2026-03-01 19:00')).not.toEqual(['test copper']);
    expect(doing(raising, '2026-03-01 21:00')).toEqual(['test copper']);
    expect(doing(raising, '2026-03-01 15:00', 'pace | urgent')).toEqual(['test copper']);
    const held = 'When | Copper\n2026-03-01 08:00 | 2.3\n2026-03-02 08:00 | 2.3';
    expect(doing(held, '2026-03-03 19:00')[0]).toBe('test copper');
    expect(doing(held, '2026-03-03 19:00')).toHaveLength(2);
    expect(doing(held, '2026-03-03 21:00')).toEqual(['test copper']);
  });

  it('asks for a test alone where a dose or a change came after the last', () => {
    expect(doing('When | Copper | Dose mL\n2026-03-01 08:00 | 1.0 | 5', '2026-03-01 08:30')).toEqual(['test copper']);
    expect(doing('When | Copper | WC L\n2026-03-01 08:00 | 2.2 | 20', '2026-03-01 08:30')).toEqual(['test copper']);
    const tested = 'When | Copper | Dose mL | Note\n2026-03-01 08:00 | 1.0 | 5 | read after dose';
    expect(doing(tested, '2026-03-01 08:30')[0]).toMatch(/^dose/);
  });

  it('computes the next dose and never raises by more than a quarter of the aim, half when urgent', () => {
    const raising = 'When | Copper\n2026-03-01 08:00 | 1.0';
    // A quarter of the aim 2.25 is 0.5625 mg/L: 200 L × 0.5625 mg/L ÷ 10 mg/mL = 11.25 mL.
    expect(doing(raising, '2026-03-01 09:00')[0]).toBe('dose 11.25 mL');
    // Half of it is 1.125 mg/L: 22.5 mL.
    expect(doing(raising, '2026-03-01 09:00', 'pace | urgent')[0]).toBe('dose 22.5 mL');
    // From 1.9 only 0.35 mg/L is missing to the aim: 7 mL.
    expect(doing('When | Copper\n2026-03-01 08:00 | 1.9', '2026-03-01 09:00')[0]).toBe('dose 7 mL');
  });

  it('doses nothing while a fish is there that copper kills, and says a word for one to be kept from it', () => {
    const raising = 'When | Copper | Fish in | Fish out\n2026-03-01 08:00 | 1.0 | FISH | ';
    const with_ = (fish: string) => doing(raising.replace('FISH', fish), '2026-03-01 09:00').slice(0, 2);
    expect(with_('cleaner shrimp')).toEqual(['no copper', 'test copper']);
    expect(with_('mandarin')).toEqual(['dose 11.25 mL', 'ask before dosing']);
    expect(with_('yellow tang')).toEqual(['dose 11.25 mL', 'test copper']);
    expect(doing('When | Copper\n2026-03-01 08:00 | 1.0', '2026-03-01 09:00', 'fish | cleaner shrimp')[0]).toBe(
      'no copper',
    );
    const moved = `${raising.replace('FISH', 'cleaner shrimp')}\n2026-03-01 08:20 |  | | cleaner shrimp`;
    expect(doing(moved, '2026-03-01 09:00')[0]).toBe('dose 11.25 mL');
  });

  it('says what is lacking where the strength is', () => {
    const treatment = treatmentFrom(
      'When | Copper\n2026-03-01 08:00 | 1.0',
      'volume | 200\nform | chelated',
      '2026-03-01 09:00',
    );
    expect(doNow(treatment)[0]).toEqual({ kind: 'strength missing' });
  });

  it('changes water where the level is above the band', () => {
    // To lower 200 L from 3.0 to the aim 2.25: 200 × (1 − 2.25 ÷ 3.0) = 50 L.
    expect(doing('When | Copper\n2026-03-01 08:00 | 3.0', '2026-03-01 09:00')[0]).toBe('change water 50 L');
  });

  it('says how long is left in a hold that needs nothing now', () => {
    const held = 'When | Copper\n2026-03-01 08:00 | 2.3\n2026-03-02 08:00 | 2.3';
    expect(doing(held, '2026-03-02 20:00')).toEqual(['test copper', 'hold 28.5 days left']);
  });

  it('points to the gates once the days are done', () => {
    const rows = Array.from(
      { length: 32 },
      (_, day) => `2026-${day < 31 ? `03-${String(day + 1).padStart(2, '0')}` : '04-01'} 08:00 | 2.3`,
    );
    expect(doing(`When | Copper\n${rows.join('\n')}`, '2026-04-01 09:00')).toEqual(['see QT.READY']);
  });

  it('doses on no bound or range that may be in the band, and otherwise from its high end', () => {
    expect(doing('When | Copper\n2026-03-01 08:00 | <2.4', '2026-03-01 09:00')).toEqual(['test copper']);
    // From 1.9, the high end: 200 L × 0.35 mg/L ÷ 10 mg/mL = 7 mL.
    expect(doing('When | Copper\n2026-03-01 08:00 | 1.7-1.9', '2026-03-01 09:00')[0]).toBe('dose 7 mL');
  });

  it('neither doses nor changes water by a reading that leaves open whether it must', () => {
    const at = (reading: string) => doing(`When | Copper\n2026-03-01 08:00 | ${reading}`, '2026-03-01 09:00');
    // In the band and without a top: a change might take it below.
    expect(at('>2.1')).toEqual(['test copper']);
    // Close to the limit at one end and above the aim at the other: no dose of a negative amount.
    expect(at('1.96-2.4').some((task) => task.startsWith('dose'))).toBe(false);
    // From 5.0 at least to 2.25: 200 × (1 − 2.25 ÷ 5.0) = 110 L.
    expect(at('>5.0')[0]).toBe('change water 110 L');
    // To 2.25 from 2.6 would take 2.0 to 1.73; 200 × (1 − 1.95 ÷ 2.0) = 5 L keep it in the band.
    expect(at('2.0-2.6')[0]).toBe('change water 5 L');
    expect(at('1.95-2.6')).not.toContain('change water 0 L');
  });

  it('never doses past the top of the band, whatever the aim on the card', () => {
    // From 2.5 at most to 2.55: 200 L × 0.05 mg/L ÷ 10 mg/mL = 1 mL; an aim of 3 is above the band.
    expect(doing('When | Copper\n2026-03-01 08:00 | 1.96-2.5', '2026-03-01 09:00', 'aim | 3')[0]).toBe('dose 1 mL');
  });

  it('doses nothing while the fish is ill', () => {
    const log = 'When | Copper | Signs\n2026-03-01 08:00 | 2.3 | eating\n2026-03-02 08:00 | 1.8 | not eating';
    expect(doing(log, '2026-03-02 09:00').some((task) => task.startsWith('dose'))).toBe(false);
  });

  it('raises again after a recovery only what was lowered', () => {
    const log = (level: number) =>
      `When | Copper | Signs\n2026-03-01 08:00 | 2.3 | not eating\n2026-03-02 08:00 | 1.5 | \n2026-03-03 08:00 | ${level} | eating again`;
    expect(doing(log(1.5), '2026-03-03 09:00')[0]).toBe('raise slowly');
    expect(doing(log(2.3), '2026-03-03 09:00')).not.toContain('raise slowly');
  });

  it('names a row that cannot be read, and acts on the signs of the fish', () => {
    const log =
      'When | Copper | Signs\n2026-03-01 08:00 | 2.3 | eating\n2026-03-02 08:00 | LOW | \n2026-03-03 08:00 | 2.3 | not eating';
    expect(doing(log, '2026-03-03 09:00').slice(0, 2)).toEqual(['fix the log', 'test ammonia, oxygen and copper']);
  });
});
