import { rememberedReading } from '../../../../src/engine/rules/signs/rememberedReading.js';
import { signReading } from '../../../../src/engine/rules/signs/signReading.js';

describe('rememberedReading', () => {
  it('reads as signReading does, the first time and again', () => {
    for (const text of ['', 'eating well', 'white spots', 'same', 'x'.repeat(300), 'eating well', 'white spots']) {
      expect(rememberedReading(text)).toEqual(signReading(text));
    }
  });

  it('remembers a text', () => {
    expect(rememberedReading('eating well')).toBe(rememberedReading('eating well'));
  });

  it('reads on once more texts came than it keeps', () => {
    for (let n = 0; n < 10_100; n++) rememberedReading(`${n}`);
    expect(rememberedReading('white spots')).toEqual(signReading('white spots'));
  });
});
