import { examples, type Example, type ExampleCell } from '../../functions/examples.js';
import { standInHost, type Answer } from '../host/standInHost.js';
import { callIn } from './callIn.js';

const host = standInHost();

function answerOf({ formula }: Example): Answer {
  const { name, given } = callIn(formula);
  return host.call(name, ...given);
}

/** A whole number is meant exactly, another one to its last decimal. */
function agrees(cell: unknown, stated: ExampleCell | undefined): boolean {
  if (typeof cell !== 'number' || typeof stated !== 'number') return cell === stated;
  const decimals = String(stated).split('.')[1]?.length;
  return Math.abs(cell - stated) <= (decimals === undefined ? 1e-9 : 0.5 * 10 ** -decimals);
}

function differences(answer: Answer, stated: Example['answer']): string[] {
  const shown = Array.isArray(answer) ? answer : [[answer]];
  const wanted = Array.isArray(stated) ? (stated as readonly (readonly ExampleCell[])[]) : [[stated as ExampleCell]];
  return wanted.flatMap((row, r) => {
    const cells: readonly unknown[] = shown[r] ?? [];
    const wrong = row.filter((cell, c) => !agrees(cells[c], cell)).map((cell) => `row ${r + 1}: ${cell}`);
    return cells.length === row.length ? wrong : [...wrong, `row ${r + 1} has ${cells.length} cells`];
  });
}

describe('the examples', () => {
  it('are one for each function, and no others', () => {
    expect(examples.map(({ name }) => name).sort()).toEqual(host.metadata.functions.map(({ name }) => name).sort());
  });

  it.each(examples.map((example) => [example.formula, example] as const))('%s gives what it says', (_, example) => {
    expect(example.formula.startsWith(`=QT.${example.name}(`)).toBe(true);
    const answer = answerOf(example);
    expect(Array.isArray(answer)).toBe(Array.isArray(example.answer));
    expect(differences(answer, example.answer)).toEqual([]);
  });

  it.each(examples.map((example) => [example.name, example.shows] as const))('%s is told in a sentence', (_, shows) => {
    expect(shows).toMatch(/^[A-Z0-9].*\.$/);
    expect(shows.length).toBeLessThanOrEqual(120);
    expect(shows).not.toMatch(/\bsafe|\bcured?\b/i);
  });

  it('are told apart from a wrong answer', () => {
    expect(differences(2.06, 2.05)).toEqual(['row 1: 2.05']);
    expect(differences(11.4, 11)).toEqual(['row 1: 11']);
    expect(differences([['a', 1, 2]], [['a', 1]])).toEqual(['row 1 has 3 cells']);
    expect(differences({ error: '#N/A' }, 2)).toEqual(['row 1: 2']);
  });
});
