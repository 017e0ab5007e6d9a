import { doNow } from '../../../src/engine/judgement/doNow.js';
import { stateOf } from '../../../src/engine/judgement/state.js';
import { doNowTable } from '../../../src/engine/text/doNowTable.js';
import { treatmentFrom } from '../rules/treatmentFrom.js';

const card = `
  volume | 200 L
  form | chelated
  strength | 10 mg/mL
`;
const doing = (log: string, asOf: string, more = '') => {
  const treatment = treatmentFrom(log, card + more, asOf);
  return doNowTable(doNow(stateOf(treatment))).rows.map(([what, amount, unit]) =>
    [what, typeof amount === 'number' ? Math.round(amount * 100) / 100 : amount, unit].join(' ').trim(),
  );
};

describe('doNow', () => {
  it('asks for a test first where there is none', () => {
    expect(doing('When | Copper | Note\n2026-03-01 08:00 | | tank set up', '2026-03-01 09:00')).toEqual([
      'test copper',
    ]);
  });

  it('calls a reading a slip only where the level came back to what the log explains', () => {
    const log = (second: number, third: number): string =>
      `When | Copper\n2026-03-01 08:00 | 2.2\n2026-03-02 08:00 | 2.2\n2026-03-03 08:00 | 1.2\n2026-03-03 20:00 | ${second}\n2026-03-04 08:00 | ${third}`;
    expect(doing(log(2.2, 2.2), '2026-03-04 08:00')).toContain('correct row 4');
    expect(doing(log(1.65, 1.68), '2026-03-04 08:00')).not.toContain('correct row 4');
  });

  it('names the row of a finding once', () => {
    const treatment = treatmentFrom(
      'When | Copper\n2026-03-01 08:00 | 2.2\n2026-03-02 08:00 | LOW',
      card,
      '2026-03-02 09:00',
    );
    const reasons = doNowTable(doNow(stateOf(treatment))).rows.map((row) => String(row[4]));
    expect(reasons.filter((why) => /row 3: (?!Row)/.test(why))).toHaveLength(1);
  });

  it('asks for a test alone where the last is too old: 12.5 h while raising, 6.5 h when urgent, 36.5 h in the hold', () => {
    const raising = 'When | Copper\n2026-03-01 08:00 | 1.0';
    expect(doing(raising, '2026-03-01 20:25')).not.toEqual(['test copper']);
    expect(doing(raising, '2026-03-01 21:00')).toEqual(['test copper']);
    expect(doing(raising, '2026-03-01 15:00', 'pace | urgent')).toEqual(['test copper']);
    const held = 'When | Copper\n2026-03-01 08:00 | 2.3\n2026-03-02 08:00 | 2.3';
    expect(doing(held, '2026-03-03 19:00')[0]).toBe('test copper');
    expect(doing(held, '2026-03-03 19:00')).toHaveLength(2);
    expect(doing(held, '2026-03-03 20:25')).toHaveLength(2);
    expect(doing(held, '2026-03-03 21:00')).toEqual(['test copper']);
  });

  it('asks for a test alone where a dose or a change came after the last', () => {
    expect(doing('When | Copper | Dose mL\n2026-03-01 08:00 | 1.0 | 5', '2026-03-01 08:30')).toEqual(['test copper']);
    expect(doing('When | Copper | WC L\n2026-03-01 08:00 | 2.2 | 20', '2026-03-01 08:30')).toEqual(['test copper']);
    const tested = 'When | Copper | Dose mL | Note\n2026-03-01 08:00 | 1.0 | 5 | read after dose';
    expect(doing(tested, '2026-03-01 08:30')[0]).toMatch(/^dose/);
  });

  it('gives half of a day’s ration at once, a quarter of the aim when urgent', () => {
    const raising = 'When | Copper\n2026-03-01 08:00 | 1.0';
    // 2.25 ÷ 4 days ÷ 2 doses = 0.28125 mg/L: 200 L × 0.28125 mg/L ÷ 10 mg/mL = 5.625 mL, rounded down.
    expect(doing(raising, '2026-03-01 09:00')[0]).toBe('dose 5.6 mL');
    // 2.25 ÷ 7 ÷ 2 = 0.1607 mg/L: 3.21 mL; by the name of a fish to be raised with caution as well.
    expect(doing(raising, '2026-03-01 09:00', 'pace | sensitive')[0]).toBe('dose 3.2 mL');
    // 2.25 ÷ 1 day ÷ 4 doses = 0.5625 mg/L: 11.25 mL.
    expect(doing(raising, '2026-03-01 09:00', 'pace | urgent')[0]).toBe('dose 11.2 mL');
    // From 1.85 only 0.15 mg/L is missing to the aim 2: 3 mL.
    expect(doing('When | Copper\n2026-03-01 08:00 | 1.85', '2026-03-01 09:00', 'aim | 2')[0]).toBe('dose 3 mL');
  });

  it('doses nothing while an animal is in that copper kills, or a fish that is to be kept from it', () => {
    const raising = 'When | Copper | Fish in | Fish out\n2026-03-01 08:00 | 1.0 | FISH | ';
    const with_ = (fish: string) => doing(raising.replace('FISH', fish), '2026-03-01 09:00').slice(0, 2);
    expect(with_('cleaner shrimp')).toEqual(['move out', 'test copper']);
    expect(with_('mandarin')).toEqual(['move out', 'test copper']);
    expect(with_('yellow tang')).toEqual(['dose 5.6 mL', 'test copper']);
    expect(doing('When | Copper\n2026-03-01 08:00 | 1.0', '2026-03-01 09:00', 'fish | cleaner shrimp')[0]).toBe(
      'move out',
    );
    const moved = `${raising.replace('FISH', 'cleaner shrimp; yellow tang')}\n2026-03-01 08:20 |  | | cleaner shrimp`;
    expect(doing(moved, '2026-03-01 09:00')).toContain('dose 5.6 mL');
  });

  it('says what is lacking where the strength is', () => {
    const treatment = treatmentFrom(
      'When | Copper\n2026-03-01 08:00 | 1.0',
      'volume | 200\nform | chelated',
      '2026-03-01 09:00',
    );
    expect(doNow(stateOf(treatment))[0]).toMatchObject({ act: 'write the strength on the card', amount: null });
  });

  it('changes water where the level is above the band', () => {
    // To lower 200 L from 3.0 to the aim 2.25: 200 × (1 − 2.25 ÷ 3.0) = 50 L.
    expect(doing('When | Copper\n2026-03-01 08:00 | 3.0', '2026-03-01 09:00')[0]).toBe('change water 50 L');
  });

  it('says how long is left in a hold that needs nothing now', () => {
    const held = 'When | Copper\n2026-03-01 08:00 | 2.3\n2026-03-02 08:00 | 2.3';
    expect(doing(held, '2026-03-02 20:00')).toEqual(['test copper', 'days left 28.5 days']);
  });

  it('takes copper out and points to the gates once the days are done', () => {
    const rows = Array.from(
      { length: 32 },
      (_, day) => `2026-${day < 31 ? `03-${String(day + 1).padStart(2, '0')}` : '04-01'} 08:00 | 2.3`,
    );
    expect(doing(`When | Copper\n${rows.join('\n')}`, '2026-04-01 09:00')).toEqual([
      'test copper',
      'take copper out',
      'see QT.READY',
    ]);
  });

  it('doses on no bound or range that may be in the band, and otherwise from its high end', () => {
    expect(doing('When | Copper\n2026-03-01 08:00 | <2.4', '2026-03-01 09:00')).toEqual(['test copper']);
    // From 1.9, the high end, to the aim 2.1: 200 L × 0.2 mg/L ÷ 10 mg/mL = 4 mL.
    expect(doing('When | Copper\n2026-03-01 08:00 | 1.7-1.9', '2026-03-01 09:00', 'aim | 2.1')[0]).toBe('dose 4 mL');
  });

  it('neither doses nor changes water by a reading that leaves open whether it must', () => {
    const at = (reading: string) => doing(`When | Copper\n2026-03-01 08:00 | ${reading}`, '2026-03-01 09:00');
    // In the band and without a top: a change might take it below.
    expect(at('>2.1')).toEqual(['test copper']);
    // Close to the limit at one end and above the aim at the other: no dose of a negative amount.
    expect(at('1.96-2.4').some((task) => task.startsWith('dose'))).toBe(false);
    // From 5.0 at least to 2.25 it would take 110 L: at most half of the tank at once.
    expect(at('>5.0')[0]).toBe('change water 100 L');
    // To 2.25 from 2.7 would take 2.0 to 1.67; 200 × (1 − 1.95 ÷ 2.0) = 5 L keep it in the band.
    expect(at('2.0-2.7')[0]).toBe('change water 5 L');
    expect(at('1.95-2.7')).not.toContain('change water 0 L');
  });

  it('doses nothing to an aim outside the band', () => {
    const low = 'When | Copper\n2026-03-01 08:00 | 1.8';
    expect(doing(low, '2026-03-01 09:00', 'aim | 3')).toEqual(['check the card', 'test copper']);
    expect(doing(low, '2026-03-01 09:00', 'aim | 1.9')).toEqual(['check the card', 'test copper']);
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

  it('raises nothing after a recovery on a reading that is not believed: it is tested again first', () => {
    const log = (level: number) =>
      `When | Copper | Signs\n2026-03-01 08:00 | 2.3 | not eating\n2026-03-02 08:00 | 2.3 | \n2026-03-03 08:00 | ${level} | eating again`;
    expect(doing(log(0.23), '2026-03-03 09:00')).toContain('test copper again');
    expect(doing(log(0.23), '2026-03-03 09:00')).not.toContain('raise slowly');
  });

  it('doses nothing in the first day of an untreated fish in a hold', () => {
    const log =
      'When | Copper | Fish in\n2026-03-01 08:00 | 2.0 | firefish\n2026-03-02 08:00 | 1.98 | \n2026-03-03 08:00 | 1.96 | NEW';
    expect(doing(log.replace('NEW', ''), '2026-03-03 09:00')[0]).toMatch(/^dose/);
    expect(doing(log.replace('NEW', '2 royal grammas'), '2026-03-03 09:00').slice(0, 2)).toEqual([
      'look at the fish',
      'test copper',
    ]);
  });

  it('names a row that cannot be read, and acts on the signs of the fish', () => {
    const log =
      'When | Copper | Signs\n2026-03-01 08:00 | 2.3 | eating\n2026-03-02 08:00 | LOW | \n2026-03-03 08:00 | 2.3 | not eating';
    expect(doing(log, '2026-03-03 09:00').slice(0, 2)).toEqual(['correct row 3', 'test ammonia and oxygen']);
  });
});
