import { absorber } from '../../../src/engine/rules/absorber.js';
import { findingsBy, foundBy, raisedLog } from './raisedLog.js';

const falling = [2.1, 1.97, 1.85, 1.74, 1.63];
const steady = [2.25, 2.24, 2.25, 2.23, 2.24];

function noted(note: string, levels: readonly number[]): string {
  const days = levels.map((level, day) => `  2026-03-${String(day + 9).padStart(2, '0')} 08:00 | ${level} |\n`);
  return `${raisedLog}  2026-03-08 08:00 | 2.24 | | | | ${note}\n${days.join('')}`;
}

describe('absorber', () => {
  it.each([
    'live rock added',
    'a bag of carbon in the filter',
    'coral sand in one corner',
    'aragonite',
    'put in crushed coral',
    'resin in the canister',
    'new media from the display',
    'calcareous media',
  ])('finds "%s" with a falling level', (note) => {
    expect(foundBy(absorber, noted(note, falling))).toEqual(['warning 9 absorber']);
  });

  it('gives the loss beside the usual one', () => {
    const finding = findingsBy(absorber, noted('live rock added', falling))[0];
    expect(finding).toMatchObject({ word: 'live rock', usual: 0.005 });
    expect((finding as unknown as { lossPerDay: number }).lossPerDay).toBeGreaterThan(0.04);
    expect((finding as unknown as { lossPerDay: number }).lossPerDay).toBeLessThan(0.08);
  });

  it.each([
    ['where the level stays', noted('live rock added', steady)],
    ['that is not there', noted('no rock in this tank', falling)],
    ['that was taken out', noted('took out the carbon', falling)],
    ['that is a fish', noted('rock beauty hiding', falling)],
    ['where only the level falls', noted('all fine', falling)],
  ])('finds none %s', (_, log) => {
    expect(foundBy(absorber, log)).toEqual([]);
  });

  it('leaves the usual loss of free copper alone', () => {
    const card = 'volume | 200 L\n form | sulfate\n strength | 1 mg/mL\n meter accuracy | 0.005';
    const log = noted('rock in the corner', [0.19, 0.175, 0.163, 0.15, 0.14]).replace(/2\.\d+/g, '0.2');
    expect(foundBy(absorber, log, card)).toEqual([]);
  });
});
