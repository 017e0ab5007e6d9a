import { fishNames } from '../../../src/engine/fish/fishNames';
import { tolerancesOf } from '../../../src/engine/fish/tolerance.js';
import { toleranceTable } from '../../../src/engine/text/fishTables.js';

const table = (...texts: string[]) => toleranceTable(tolerancesOf(texts.flatMap(fishNames)));
const row = (text: string) => table(text).rows[0] ?? [];

describe('toleranceTable', () => {
  it('has a row per name, in the order given', () => {
    const { rows } = table('Yellow tang; torch coral', 'clownfish');
    expect(rows.map(([fish, advice]) => [fish, advice])).toEqual([
      ['Yellow tang', 'caution'],
      ['torch coral', 'never'],
      ['clownfish', 'usual care'],
    ]);
  });

  it('says why, and from where', () => {
    expect(row('torch coral')).toEqual([
      'torch coral',
      'never',
      'Copper at treatment levels is lethal to most invertebrates: keep it out of the copper tank and its water.',
      'Yanong, UF/IFAS circular FA165, opening seen, its numbers from memory',
    ]);
    expect(row('yellow tang')[3]).toBe('from memory, unchecked');
    expect(row('black molly')[3]).toBe('common practice, no published source');
  });

  it('says by which name it was read', () => {
    expect(row('Centropyge argi')[2]).toMatch(/^No entry of its own, read as Dwarf angelfish\. /);
    expect(row('C. bispinosa')[2]).toMatch(/^Read as Coral beauty\. /);
    expect(row('flame')[2]).toMatch(
      /^Several entries fit \(Flame angelfish, Flame hawkfish\); the strictest counts\. /,
    );
    expect(row('anemone and clownfish')[2]).toMatch(
      /^No entry of its own\. Several entries fit \(Anemones, Clownfish\); the strictest counts\. /,
    );
  });

  it('promises nothing of what is not listed, and offers the nearest names', () => {
    expect(row('yelow tang')).toEqual([
      'yelow tang',
      'not listed',
      expect.stringMatching(
        /^Not listed is not the same as safe or tolerant: ask an aquatic veterinarian before any copper\. Nearest names on the list: Yellow tang, .+, .+\.$/,
      ),
      '',
    ]);
    expect(row('🐠')[2]).toMatch(/No listed name is close to it\.$/);
    expect(row('clownfish '.repeat(20))[2]).toMatch(/^Too long for a name: .*not listed is not the same as safe/);
  });

  it('cuts a long name, and never shows one that looks like a number', () => {
    const { rows } = table('x'.repeat(10_000), '\u0007tang\u0000', '🐠'.repeat(70));
    expect(rows.map(([fish]) => fish)).toEqual([`${'x'.repeat(59)}…`, 'tang', `${'🐠'.repeat(59)}…`]);
  });

  it('keeps every cell short enough to read', () => {
    for (const name of [
      'flame',
      'clownfish, anemone',
      'yelow tang',
      'shrimp',
      'orchid dottyback',
      'yellow coris wrasse',
    ]) {
      for (const cells of table(name).rows)
        for (const cell of cells) expect(String(cell).length).toBeLessThanOrEqual(260);
    }
  });
});
