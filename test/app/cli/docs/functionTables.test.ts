import { functionTables } from '../../../../src/app/cli/docs/functionTables.js';

const catalogue = {
  functions: [
    {
      id: 'HOLDS',
      name: 'HOLDS',
      description: 'Every hold | and its days.',
      parameters: [{ name: 'pH' }, { name: 'hoursBetween', optional: true }, { name: 'mL', optional: true }],
    },
  ],
};
const example = { name: 'HOLDS', formula: '=QT.HOLDS(8)', shows: 'It holds.' };

describe('functionTables', () => {
  it('names arguments as people read them, and shows a value', () => {
    const text = functionTables(catalogue, [{ topic: 'The hold', examples: [{ ...example, answer: 2.5 }] }]);
    expect(text.split('\n')).toEqual([
      '### The hold',
      '',
      '| Function | What it is for | For example |',
      '| --- | --- | --- |',
      '| `HOLDS(pH, [hours between], [mL])` | Every hold \\| and its days. | `=QT.HOLDS(8)`<br>2.5<br>It holds. |',
    ]);
  });

  it('shows the first rows of a table, long cells cut', () => {
    const answer = [
      ['From', 'To', ''],
      ['x'.repeat(61), true, ''],
      [3, 4, ''],
    ];
    const text = functionTables(catalogue, [{ topic: 'The hold', examples: [{ ...example, answer }] }]);
    expect(text).toContain(`<br>From · To ·<br>${'x'.repeat(60)}… · true ·<br>It holds.`);
    expect(text).not.toContain('3 · 4');
  });

  it('throws for an example of no function', () => {
    const stray = { ...example, name: 'HOLD', answer: 1 };
    expect(() => functionTables(catalogue, [{ topic: 'The hold', examples: [stray] }])).toThrow('HOLD has an example');
  });
});
