import fc from 'fast-check';
import { signReading } from '../../../../src/engine/rules/signs/signReading.js';
import { phrases } from './phrases.js';

const cases = Object.entries(phrases).flatMap(([kind, texts]) => texts.map((text) => [text, kind] as const));
const signs = phrases.sign.filter((text) => !/\?/.test(text));
const words = cases.flatMap(([text]) => text.split(' '));

describe('signReading', () => {
  it.each(cases)('reads %j as %s', (text, kind) => {
    expect(signReading(text).kind).toBe(kind);
  });

  it('has at least 80 different phrases to read', () => {
    expect(new Set(cases.map(([text]) => text)).size).toBe(cases.length);
    expect(cases.length).toBeGreaterThan(80);
  });

  it('does not mind case, spaces around, or a full stop', () => {
    for (const [text, kind] of cases) {
      if (/\?$/.test(text)) continue;
      expect([text, signReading(`  ${text.toUpperCase()} .`).kind]).toEqual([text, kind]);
    }
  });

  it('takes a sign beside anything else for a sign', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...signs),
        fc.constantFrom(...phrases.clear),
        fc.constantFrom('; ', '. ', '\n'),
        (sign, clear, mark) => {
          expect([clear, sign, signReading(`${clear}${mark}${sign}`).kind]).toEqual([clear, sign, 'sign']);
        },
      ),
      { numRuns: 2000, seed: 1 },
    );
  });

  it('does not take a word it does not know for a clear one', () => {
    for (const text of phrases.clear) expect([text, signReading(`${text}; blorf`).kind]).toEqual([text, 'unread']);
  });

  it('names the fish, of a text with a sign only those that are not well', () => {
    expect(signReading('clownfish fine, tang not eating').fish).toEqual(['tang']);
    expect(signReading('Tangs and butterflies eating').fish).toEqual(['tang', 'butterfly']);
    expect(signReading('butterflyfish eating').fish).toEqual(['butterfly']);
    expect(signReading('not eating').fish).toEqual([]);
  });

  it.each([
    ['not eating', ['feeding'], []],
    ['breathing heavily', ['breathing'], []],
    ['swimming into the flow', ['acting'], []],
    ['flashing and lethargic', ['rubbing', 'listless'], []],
    ['looks sick', ['all'], []],
    ['one dead', ['deaths'], []],
    ['all eating except the tang', ['feeding'], ['feeding', 'feeding well']],
    ['ate yesterday, not today', ['feeding'], ['feeding']],
    ['eating but breathing heavily', ['breathing'], ['feeding']],
    ['eating', [], ['feeding']],
    ['eating well', [], ['feeding', 'feeding well']],
    ['eating again', [], ['feeding', 'feeding well']],
    ['breathing normal', [], ['breathing']],
    ['eyes clear', [], ['looks']],
    ['no spots', [], ['looks']],
    ['no flashing', [], ['rubbing']],
    ['0 dead', [], ['deaths']],
    ['was flashing, not now', [], ['rubbing']],
    ['acting normally', [], ['all']],
    ['no signs', [], ['all']],
    ['nothing to report', [], ['all']],
    ['none', [], []],
    ['hiding', ['acting'], []],
    ['weight loss', ['looks'], []],
    ['lost a clown', ['deaths'], []],
    ['purple', [], []],
  ])('knows what %j is about', (text, ails, well) => {
    expect(signReading(text)).toMatchObject({ ails, well });
  });

  it('notes what goes on as before', () => {
    expect(signReading('still not eating').continuing).toBe(true);
    expect(signReading('no change').continuing).toBe(true);
    expect(signReading('not eating').continuing).toBe(false);
  });

  it('gives one of its kinds for any text, in time that grows with its length', () => {
    const kinds = Object.keys(phrases);
    const texts = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 300 }),
      fc.array(fc.constantFrom(...words, '?', ',', '/', '\u0000')).map((list) => list.join(' ')),
    );
    fc.assert(
      fc.property(texts, (text) => {
        expect(kinds).toContain(signReading(text).kind);
      }),
      { numRuns: 2000, seed: 2 },
    );
    for (const piece of [
      'not ',
      'no flashing, ',
      'a',
      ' ',
      'eating/',
      '3 of ',
      '-',
      'breathing and ',
      '🐟',
      'water very ',
    ]) {
      expect(kinds).toContain(signReading(piece.repeat(20_000)).kind);
    }
  });
});
