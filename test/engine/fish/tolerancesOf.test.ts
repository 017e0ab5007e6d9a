import { fishNames } from '../../../src/engine/fish/fishNames';
import { tolerancesOf } from '../../../src/engine/fish/tolerance.js';

/** A word of its own for each number: 0 is "qaaaq". */
const letters = (i: number): string =>
  `q${String.fromCharCode(97 + (i % 26), 97 + (Math.floor(i / 26) % 26), 97 + (Math.floor(i / 676) % 26))}q`;

describe('tolerancesOf', () => {
  it('answers every name in the order given, the same name the same way', () => {
    const answers = tolerancesOf(['yellow tang', 'nonesuch', 'yellow tang']);
    expect(answers.map(({ name }) => name)).toEqual(['yellow tang', 'nonesuch', 'yellow tang']);
    expect(answers.map(({ tolerance }) => tolerance.kind)).toEqual(['listed', 'not listed', 'listed']);
    expect(tolerancesOf([])).toEqual([]);
  });

  it('takes ten times as long for ten times as many names, all different and half of them misspelt', () => {
    const words = ['yelow tang', 'manderin goby', 'some unknown wrasse', 'clownfsh', 'Centropyge argi'];
    const cost = (n: number): number => {
      const texts = Array.from({ length: n }, (_, i) => `${words[i % 5]} ${letters(i)}`);
      const from = process.cpuUsage();
      expect(tolerancesOf(texts)).toHaveLength(n);
      return process.cpuUsage(from).user;
    };
    cost(100);
    const few = cost(100);
    const many = cost(1000);
    expect(many).toBeLessThan(30 * few);
    expect(many / 1000).toBeLessThan(6000);
  });

  it('is not slowed by cells of 10,000 letters', () => {
    const from = process.cpuUsage();
    const texts = ['x'.repeat(10_000), '('.repeat(10_000), ','.repeat(10_000), 'ab '.repeat(3_333), 'ﷺ'.repeat(80)];
    expect(tolerancesOf(texts.flatMap(fishNames)).map(({ tolerance }) => tolerance.kind)).toEqual(
      Array<string>(4).fill('too long'),
    );
    expect(process.cpuUsage(from).user / 1000).toBeLessThan(2000);
  });
});
