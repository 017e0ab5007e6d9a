import { tolerancesOf, type FishCell } from '../../src/fish/tolerancesOf';

const column = (...texts: string[]): FishCell[] => texts.map((text, i) => ({ text, row: i + 1 }));
const names = (...texts: string[]): readonly string[] => {
  const answer = tolerancesOf(column(...texts));
  if (!answer.ok) throw new Error(answer.problem.code);
  return answer.value.map(({ name }) => name);
};

/** A word of its own for each number: 0 is "qaaaq". */
const letters = (i: number): string =>
  `q${String.fromCharCode(97 + (i % 26), 97 + (Math.floor(i / 26) % 26), 97 + (Math.floor(i / 676) % 26))}q`;

describe('tolerancesOf', () => {
  it('takes names apart at commas, semicolons and new lines, in the order given', () => {
    expect(names('yellow tang, clownfish; seahorse\nmandarin')).toEqual(['yellow tang', 'clownfish', 'seahorse', 'mandarin']);
    expect(names('b', 'a, c')).toEqual(['b', 'a', 'c']);
  });

  it('leaves out what names no fish', () => {
    expect(names('', ' ', 'yellow tang,, ;', '-', 'none', 'None')).toEqual(['yellow tang']);
  });

  it('keeps a name with brackets whole', () => {
    expect(names('emperor angelfish (juvenile, 8 cm), clownfish')).toEqual(['emperor angelfish (juvenile, 8 cm)', 'clownfish']);
    expect(names('emperor (8 cm, clownfish')).toEqual(['emperor (8 cm', 'clownfish']);
  });

  it('repeats a name on one line', () => {
    expect(names('  yellow\t\u0000 tang ')).toEqual(['yellow tang']);
  });

  it.each(['12', '2.05', '1e5', '0x10', '2026-03-01', '½', 'yellow tang, 3'])('refuses %j with its row', (text) => {
    expect(tolerancesOf(column('clownfish', text))).toMatchObject({
      ok: false,
      problem: { code: 'not-a-value', at: { row: 2 }, kind: 'fish' },
    });
  });

  it('takes ten times as long for ten times as many names, all different and half of them misspelt', () => {
    const words = ['yelow tang', 'manderin goby', 'some unknown wrasse', 'clownfsh', 'Centropyge argi'];
    const texts = (n: number): string[] => Array.from({ length: n }, (_, i) => `${words[i % 5]} ${letters(i)}`);
    const cost = (n: number): number => {
      const from = process.cpuUsage();
      expect(names(...texts(n))).toHaveLength(n);
      return process.cpuUsage(from).user;
    };
    cost(100);
    const few = cost(100);
    const many = cost(1000);
    expect(many).toBeLessThan(30 * few);
    expect(many / 1000).toBeLessThan(6000);
  });

  it('is not slowed by a cell of 10,000 letters', () => {
    const from = process.cpuUsage();
    expect(names('x'.repeat(10_000), '('.repeat(10_000), ','.repeat(10_000), 'ab '.repeat(3_333), 'ﷺ'.repeat(80))).toHaveLength(4);
    expect(process.cpuUsage(from).user / 1000).toBeLessThan(2000);
  });
});
