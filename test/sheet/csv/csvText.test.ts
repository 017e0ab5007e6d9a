import fc from 'fast-check';
import { csvText } from '../../../src/sheet/csv/csvText.js';
import { dateText } from '../../../src/sheet/csv/dateText.js';
import { numberText } from '../../../src/sheet/csv/numberText.js';
import type { CellValue } from '../../../src/sheet/cell/cellValue.js';
import { csvValues } from './csvBook.js';

describe('csvText', () => {
  it('writes values plainly, quotes where needed, lines ended by CR and LF', () => {
    const error = { type: 'Error', basicValue: '#N/A' } as const;
    expect(
      csvText([
        ['Date', 'Note, all', null],
        [46082.5, 'say "no"', true],
        [-0.25, 'a\nb', error],
      ]),
    ).toBe('Date,"Note, all",\r\n46082.5,"say ""no""",TRUE\r\n-0.25,"a\nb",#N/A\r\n');
    expect(csvText([['a', 'b,c', 1.234]], ';')).toBe('a;"b,c";1.2340\r\n');
    expect(csvText([['a\tb', 'sep=;']], '\t')).toBe('"a\tb"\t"sep=;"\r\n');
    expect(csvText([[0.1 + 0.2, 1e-7, 1.25e21, NaN]])).toBe('0.30000000000000004,1e-7,1.25e+21,#NUM!\r\n');
  });

  it.each([
    ['=1+1', "'=1+1"],
    ['+1+1', "'+1+1"],
    ['-1+1', "'-1+1"],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['=cmd|"/C calc"!A0', `"'=cmd|""/C calc""!A0"`],
    ['  =1+1', "'  =1+1"],
    ['\t=1+1', `"'\t'=1+1"`],
    ['\r=1+1', `"'\r'=1+1"`],
    ['\n=1+1', `"'\n'=1+1"`],
    ['\tplain', `"'\tplain"`],
    ['\rplain', `"'\rplain"`],
    ['\uff1d1+1', "'\uff1d1+1"],
    ['\uff0b1', "'\uff0b1"],
    ['\uff0d1', "'\uff0d1"],
    ['\uff20x', "'\uff20x"],
    ["'=1+1", "''=1+1"],
    ['a;=1+1', `"a;'=1+1"`],
    ['a,@SUM(A1)', `"a,'@SUM(A1)"`],
    ['a\n-2+3+cmd|x', `"a\n'-2+3+cmd|x"`],
    ['fed\n- skimmer off', '"fed\n- skimmer off"'],
    ['ate, -2 left', '"ate, -2 left"'],
    ['-2', '-2'],
    ['+2.5', '+2.5'],
    ['2-3', '2-3'],
    ["it's", "it's"],
  ])('writes %j as %j', (text, written) => {
    expect(csvText([[text]])).toBe(`${written}\r\n`);
  });

  it('lets no field begin a formula, whatever the text', () => {
    const letters = fc.constantFrom(
      '=',
      '+',
      '-',
      '@',
      '\t',
      '\r',
      '\n',
      ' ',
      '"',
      "'",
      ',',
      ';',
      '1',
      'a',
      '(',
      '|',
      '\uff1d',
    );
    fc.assert(
      fc.property(fc.array(letters, { maxLength: 12 }), (pieces) => {
        const text = pieces.join('');
        const field = csvText([[text]])
          .slice(0, -2)
          .replace(/^"(?=[^]*"$)/, '');
        if (numberText(text) === null) expect(field).not.toMatch(/^[\s]*[=+\-@\uff1d]|^[\t\r]/);
      }),
      { numRuns: 3000, seed: 52 },
    );
  });

  it('gives values back when it is read', () => {
    const isText = (text: string): boolean =>
      text.trim() !== '' &&
      numberText(text) === null &&
      dateText(text) === null &&
      !/^(?:TRUE|FALSE|#.*|\ufeff.*)$/s.test(text);
    const pieces = fc.constantFrom(...'=+-@\'"\t\r\n ,;|!(ab1\uff1d\uff0b'.split(''), 'note', 'sep=', 'é', '€');
    const texts = fc
      .oneof(
        fc.array(pieces, { maxLength: 10 }).map((each) => each.join('')),
        fc.string(),
      )
      .filter(isText);
    const numbers = fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => (value === 0 ? 0 : value));
    const error: CellValue = { type: 'Error', basicValue: '#VALUE!' };
    const value = fc.oneof<fc.Arbitrary<CellValue>[]>(
      texts,
      numbers,
      fc.boolean(),
      fc.constant(null),
      fc.constant(error),
      fc.integer(),
    );
    fc.assert(
      fc.property(
        fc.array(fc.array(value, { minLength: 2, maxLength: 2 }), { minLength: 1, maxLength: 5 }),
        fc.constantFrom(',', ';', '\t'),
        (rows, delimiter) => {
          const shown = rows.map((row) => (row.every((cell) => cell === null) ? [] : row));
          expect(csvValues(csvText(rows, delimiter), { delimiter })).toEqual(shown);
        },
      ),
      { numRuns: 2000, seed: 52 },
    );
  });
});
