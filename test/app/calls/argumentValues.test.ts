import { argumentValues } from '../../../src/app/calls/argumentValues.js';
import type { CellError, Given } from '../../../src/sheet/cell/cellValue.js';
import type { FunctionEntry } from '../../../src/app/calls/functionCatalogue.js';

const entry: FunctionEntry = {
  id: 'HOLDDAYS',
  name: 'HOLDDAYS',
  parameters: [
    { name: 'when', type: 'any', dimensionality: 'matrix' },
    { name: 'level', type: 'any', dimensionality: 'scalar' },
    { name: 'days', type: 'any', optional: true },
  ],
};
const error: CellError = { type: 'Error', basicValue: '#N/A' };
const values = (...given: Given[]) => argumentValues(entry, given, true);

describe('argumentValues', () => {
  it.each<[string, Given[], unknown[]]>([
    [
      'a range as an array of rows',
      [
        [
          [1, null],
          ['', 2],
        ],
        3,
        4,
      ],
      [
        [
          [1, null],
          ['', 2],
        ],
        3,
        4,
      ],
    ],
    ['one cell given to a range as [[v]]', [5, 1, 2], [[[5]], 1, 2]],
    ['a one-cell range given to a range as it is', [[[5]], 1, 2], [[[5]], 1, 2]],
    ['an omitted optional argument as null', [[[5]], 1], [[[5]], 1, null]],
    ['an argument left out between commas as null', [null, null, 2], [null, null, 2]],
    ['a one-cell range given to a scalar as its cell', [[[5]], [['2.05']], [[null]]], [[[5]], '2.05', null]],
    ['a wider range given to a scalar as rows', [[[5]], [[1], [2]]], [[[5]], [[1], [2]], null]],
    ['an error cell as an object', [[[error]], [[error]]], [[[error]], error, null]],
  ])('passes %s', (_, given, expected) => {
    expect(values(...given)).toEqual({ values: expected });
  });

  it('hands over a copy, so that a function cannot change the sheet', () => {
    const range = [[1]];
    const taken = values(range, 1);
    if (!('values' in taken)) throw new Error('refused');
    (taken.values[0] as number[][])[0]?.push(9);
    expect(range).toEqual([[1]]);
  });

  it('answers with the first error cell where the catalogue does not take errors', () => {
    expect(argumentValues(entry, [[[1], [error]], 2], false)).toEqual({ error });
  });

  it('says how many arguments are wanted', () => {
    expect(values([[1]])).toEqual({ miscounted: 'takes at least 2 arguments: when, level' });
    expect(values(1, 2, 3, 4)).toEqual({ miscounted: 'takes at most 3 arguments: when, level, days' });
  });
});
