import { copperInTopOff } from '../../../src/engine/rules/copperInTopOff.js';
import { findingsBy, foundBy, raisedLog } from './raisedLog.js';

function toppedOff(rise: number): string {
  const days = Array.from({ length: 20 }, (_, day) => {
    const level = 2.25 + rise * (day + 1) + (day % 2 === 0 ? 0.01 : -0.01);
    return `  2026-03-${String(day + 8).padStart(2, '0')} 08:00 | ${level.toFixed(2)} | | | 4 |\n`;
  });
  return raisedLog + days.join('');
}

describe('copperInTopOff', () => {
  it.each([
    'dosed the top-off',
    'ATO water dosed',
    'copper in top off',
    'topped off with copper water',
    'medicated ATO reservoir',
    'topped up with 4 L treated',
  ])('finds it in the words "%s"', (note) => {
    expect(foundBy(copperInTopOff, `${raisedLog}  2026-03-08 08:00 | 2.25 | | | 4 | ${note}`)).toEqual([
      'warning 9 copper-in-top-off',
    ]);
  });

  it('finds it in a level that rises as water is topped off', () => {
    expect(foundBy(copperInTopOff, toppedOff(0.045))).toEqual(['warning 28 copper-in-top-off']);
    const finding = findingsBy(copperInTopOff, toppedOff(0.045))[0] as unknown as { level: number };
    expect(finding.level).toBeGreaterThan(1.8);
    expect(finding.level).toBeLessThan(2.7);
  });

  it('finds none where the level stays', () => {
    expect(foundBy(copperInTopOff, toppedOff(0))).toEqual([]);
    expect(foundBy(copperInTopOff, toppedOff(-0.005))).toEqual([]);
  });

  it.each([
    'topped off with RO',
    'no copper in the top-off',
    'top-off without copper',
    'topped off, then dosed 2 mL',
    'copper-free top-off',
    'dosed 2 mL',
    'topped off 4 L',
    'never dose the top-off',
  ])('finds none in the words "%s"', (note) => {
    expect(foundBy(copperInTopOff, `${raisedLog}  2026-03-08 08:00 | 2.25 | | | 4 | ${note}`)).toEqual([]);
  });
});
