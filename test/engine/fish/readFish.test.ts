import { readFish } from '../../../src/engine/fish/readFish';
import type { Cell } from '../../../src/engine/units/cell';

const read = (fish: readonly (readonly Cell[])[]) => readFish({ fish, cellOf: (raw) => raw as Cell });
const column = (...cells: Cell[]) => read(cells.map((cell) => [cell]));
const problem = (...cells: Cell[]) => {
  const answer = column(...cells);
  if (answer.ok) throw new Error(answer.value.join());
  return answer.problem;
};

describe('readFish', () => {
  it('reads a cell, a column or a row, in the order given', () => {
    expect(read([['b, a']])).toEqual({ ok: true, value: ['b', 'a'] });
    expect(column('b', 'a; c')).toEqual({ ok: true, value: ['b', 'a', 'c'] });
    expect(read([['b', 'a', 'c']])).toEqual({ ok: true, value: ['b', 'a', 'c'] });
  });

  it('leaves out blanks, however a host sends them', () => {
    expect(column(null, '', ' ', 'yellow tang', '-', 'none', 0)).toEqual({ ok: true, value: ['yellow tang'] });
    expect(column(null)).toEqual({ ok: true, value: [] });
    expect(read([])).toMatchObject({ ok: false, problem: { code: 'not-a-line' } });
  });

  it('leaves out a first row of heading words, and no other', () => {
    expect(column('Fish', 'clownfish')).toEqual({ ok: true, value: ['clownfish'] });
    expect(column('Common name', 'clownfish')).toEqual({ ok: true, value: ['clownfish'] });
    expect(column('clownfish', 'Fish')).toEqual({ ok: true, value: ['clownfish', 'Fish'] });
    expect(column('Fish')).toEqual({ ok: true, value: ['Fish'] });
    expect(column('Tang', 'clownfish')).toEqual({ ok: true, value: ['Tang', 'clownfish'] });
  });

  it.each(['12', '2.05', '1e5', '0x10', '2026-03-01', '½', 'yellow tang, 3', 5, -1, true])(
    'refuses %j with its row, the heading counted',
    (cell) => {
      expect(problem('Fish', 'clownfish', cell, 7)).toMatchObject({
        code: 'not-a-value',
        at: { row: 3 },
        kind: 'fish',
      });
    },
  );

  it('names the argument where it is one cell', () => {
    expect(problem(5)).toEqual({ code: 'not-a-value', at: { field: 'fish' }, given: '5', kind: 'fish' });
  });

  it('refuses an error cell with its row, and the lowest row first', () => {
    expect(problem('clownfish', { error: '#N/A' })).toEqual({ code: 'error-cell', at: { row: 2 }, given: '#N/A' });
    expect(problem('clownfish', '12', { error: '#N/A' })).toMatchObject({ at: { row: 2 }, code: 'not-a-value' });
  });

  it('refuses a block of cells', () => {
    const block = [
      ['a', 'b'],
      ['c', 'd'],
    ];
    expect(read(block)).toEqual({ ok: false, problem: { code: 'not-a-line', field: 'fish', rows: 2, columns: 2 } });
  });
});
