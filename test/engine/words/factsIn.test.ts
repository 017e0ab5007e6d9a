import { factsIn } from '../../../src/engine/words/factsIn.js';
import { judged } from '../../notes/noteFigures.js';
import { OPEN_NOTES } from '../../notes/openNotes.js';

const context = { column: 'note', ownNames: ['B4'] } as const;

function read(text: string): readonly string[] {
  return factsIn(text, context).map(({ kind, polarity }) => `${polarity}: ${kind}`);
}

describe('what a text says', () => {
  it.each([
    ['carbon in the filter', ['now: absorbers']],
    ['took the carbon out', ['ended: absorbers']],
    ['no carbon in the filter', ['denied: absorbers']],
    ['ordered carbon', ['planned: absorbers']],
    ['read that carbon takes copper', ['hearsay: absorbers']],
    ['carbon in the display', ['other tank: absorbers']],
    ['new carbon in C3', ['other tank: absorbers']],
    ['new carbon in B4', ['now: absorbers']],
    ['No shrimp, snail or crab', ['denied: invertebrates', 'denied: invertebrates', 'denied: invertebrates']],
    ['If the heater sticks: call. Heater stuck, 31 C', ['now: broken heater']],
    ['over my dead body', []],
    ['topped off with RO water', ['denied: copper in the top-off']],
    ['they say prazi is fine, so it went in', ['now: medicines']],
    ['amonia test 4 mg/L', ['now: ammonia']],
    ['yellow indicator', ['denied: ammonia']],
    ['vevlet on the tang', ['now: disease']],
    ['water change 10 L matched', []],
  ])('"%s"', (text, facts) => {
    expect(read(text)).toEqual(facts);
  });

  it.each([
    ['three anthias dead', 3],
    ['lost 2 clowns', 2],
    ['half a dozen belly up', 6],
    ['dead fish', null],
  ])('counts in figures and in words: "%s"', (text, count) => {
    expect(factsIn(text, context)[0]?.count).toBe(count);
  });

  it('says where its words stand', () => {
    const text = 'Tested. Carbon in.';
    const [fact] = factsIn(text, context);
    expect(text.slice(fact?.from, fact?.to)).toBe('Carbon');
  });

  it('hears nine of ten labelled notes, and takes at most two of a hundred harmless ones for a present fact', () => {
    const all = judged(OPEN_NOTES);
    const share = (outcome: string, of: number): number => all.filter((each) => each.outcome === outcome).length / of;
    expect(share('heard', all.filter(({ note }) => note.mustRaise).length)).toBeGreaterThanOrEqual(0.9);
    expect(share('false', all.filter(({ note }) => note.severity === 'none').length)).toBeLessThanOrEqual(0.02);
  });
});
