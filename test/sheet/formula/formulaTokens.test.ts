import { formulaTokens } from '../../../src/sheet/formula/formulaTokens';

/** Kinds and texts, spaces left out, such as `reference:A1 operator:+`. */
function parts(formula: string): string[] {
  return formulaTokens(formula)
    .filter(({ kind }) => kind !== 'space')
    .map(({ kind, text }) => `${kind}:${text}`);
}

describe('formulaTokens', () => {
  it('takes nothing from the text and adds nothing', () => {
    const formulas = [
      `IF('Dad''s tank'!$A$1:B9>=1.5E-3,"a ""b""",{1,2;"x",#N/A})%`,
      "Log[[#Headers],[#Data],[When]:[Copper '[mg/L']]] & G1# & @A1:A9",
      '"open',
      'Log[open',
      "'no sheet",
      'Ünïcode_1.x\\?+💧',
    ];
    for (const formula of formulas) {
      expect(
        formulaTokens(formula)
          .map(({ text }) => text)
          .join(''),
      ).toBe(formula);
    }
  });

  it.each([
    ['A1', 'reference:A1'],
    ['$A$1:b$9', 'reference:$A$1:b$9'],
    ['A:A', 'reference:A:A'],
    ['$1:3', 'reference:$1:3'],
    ["'My log'!A1:B2", "reference:'My log'!A1:B2"],
    ["'Dad''s tank'!A:A", "reference:'Dad''s tank'!A:A"],
    ['Łóg!A1', 'reference:Łóg!A1'],
    ['Log!#REF!', 'reference:Log!#REF!'],
    ['#REF!', 'reference:#REF!'],
    ['A1048577', 'name:A1048577'],
    ['XFE1', 'name:XFE1'],
    ['band', 'name:band'],
    ['Log!band', 'name:Log!band'],
    ['_xlpm.x', 'name:_xlpm.x'],
    ['[1]Log!A1', 'outside:[1]Log!A1'],
    ["'[1]My log'!A1:B2", "outside:'[1]My log'!A1:B2"],
    ["'C:\\logs\\[past.xlsx]Log'!A1", "outside:'C:\\logs\\[past.xlsx]Log'!A1"],
    ['[1]!band', 'outside:[1]!band'],
    ['First:Last!A1', 'outside:First:Last!A1'],
    ["'First tank:Last tank'!A1", "outside:'First tank:Last tank'!A1"],
    ['Log[#All]', 'table:Log[#All]'],
    ['[@Copper]', 'table:[@Copper]'],
    ["Log[Copper '[mg/L']]", "table:Log[Copper '[mg/L']]"],
    ['Log[[#This Row],[A]:[B]]', 'table:Log[[#This Row],[A]:[B]]'],
    ['1.5e-3', 'number:1.5e-3'],
    ['.5', 'number:.5'],
    ['TRUE', 'truth:TRUE'],
    ['truest', 'name:truest'],
    ['#N/A', 'error:#N/A'],
    ['#DIV/0!', 'error:#DIV/0!'],
    ['"A1+""B1"""', 'text:"A1+""B1"""'],
  ])('reads %s as one part', (formula, part) => {
    expect(parts(formula)).toEqual([part]);
  });

  it('tells functions from references and names', () => {
    expect(parts('LOG10(A1)')).toEqual(['function:LOG10', 'open:(', 'reference:A1', 'close:)']);
    expect(parts('TRUE()')).toEqual(['function:TRUE', 'open:(', 'close:)']);
    expect(parts('_xldudf_QT_BAND("amine")')).toEqual([
      'function:_xldudf_QT_BAND',
      'open:(',
      'text:"amine"',
      'close:)',
    ]);
    expect(parts('_xlfn._xlws.FILTER(a,b)')[0]).toBe('function:_xlfn._xlws.FILTER');
  });

  it('reads operators next to each other', () => {
    expect(parts('A1<>-B1%')).toEqual(['reference:A1', 'operator:<>', 'operator:-', 'reference:B1', 'operator:%']);
    expect(parts('A1>=@B1:B9')).toEqual(['reference:A1', 'operator:>=', 'operator:@', 'reference:B1:B9']);
    expect(parts('SUM(G1#)')).toEqual(['function:SUM', 'open:(', 'reference:G1', 'operator:#', 'close:)']);
    expect(parts('A1:INDEX(A:A,5)').slice(0, 3)).toEqual(['reference:A1', 'operator::', 'function:INDEX']);
  });

  it('reads array constants', () => {
    expect(parts('{1,"a";TRUE,#N/A}')).toEqual([
      'openBrace:{',
      'number:1',
      'comma:,',
      'text:"a"',
      'semicolon:;',
      'truth:TRUE',
      'comma:,',
      'error:#N/A',
      'closeBrace:}',
    ]);
  });

  it('calls unknown what is no part of a formula', () => {
    expect(parts('"open')).toEqual(['unknown:"open']);
    expect(parts('Log[Copper')).toEqual(['unknown:Log[Copper']);
  });

  it('reads a long formula in no time', () => {
    const long = `SUM(${Array.from({ length: 5000 }, (_, i) => `A${i + 1}`).join(',')})`;
    const start = performance.now();
    expect(formulaTokens(long)).toHaveLength(10_002);
    expect(performance.now() - start).toBeLessThan(1000);
    const hostile = `${"'".repeat(20_000)}!A1`;
    formulaTokens(hostile);
    formulaTokens('['.repeat(20_000));
    formulaTokens('A'.repeat(20_000));
    expect(performance.now() - start).toBeLessThan(4000);
  });
});
