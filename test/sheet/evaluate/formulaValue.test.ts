import { error, formulaGives } from '../recalc/testBook';

const cells = {
  A1: 1,
  A2: 2.5,
  A3: '123',
  A4: true,
  A5: error('#N/A'),
  A6: '',
  B1: 'a',
  B2: 'b',
  C1: 46_082,
  C2: 46_083.5,
  D1: 'Ünï',
};

describe('formulaValue', () => {
  it.each<[string, unknown]>([
    ['1+2*3', 7],
    ['-2^2', 4],
    ['2^3^2', 64],
    ['--"3"', 3],
    ['-A2', -2.5],
    ['-A9', 0],
    ['50%', 0.5],
    ['A2%', 0.025],
    ['1E3', 1000],
    ['1/0', '#DIV/0!'],
    ['0^0', '#NUM!'],
    ['10^400', '#NUM!'],
    ['"x"+1', '#VALUE!'],
    ['"1,200"+1', 1201],
    ['"25%"*4', 1],
    ['"2026-03-01 12:00"+0', 46_082.5],
    ['"8:30"*24', 8.5],
    ['"2026-02-30"+0', '#VALUE!'],
    ['TRUE+1', 2],
    ['A5+1', '#N/A'],
    ['1/3&""', '0.333333333333333'],
    ['0.1+0.2&""', '0.3'],
    ['1E-7&""', '0.0000001'],
    ['1E21&"|"&1E20', '1E+21|100000000000000000000'],
    ['TRUE&A9&A1', 'TRUE1'],
    ['+A3', '123'],
  ])('reckons %s', async (formula, expected) => {
    expect(await formulaGives(formula, cells)).toEqual(expected);
  });

  it.each<[string, unknown]>([
    ['A3="123"', true],
    ['A3=123', false],
    ['"a"="A"', true],
    ['"a">5', true],
    ['TRUE>"z"', true],
    ['FALSE>1000', true],
    ['"b">"A"', true],
    ['"ünï"=D1', true],
    ['A9=0', true],
    ['A9=""', true],
    ['A9=FALSE', true],
    ['A9>-1', true],
    ['A6=""', true],
    ['A6=0', false],
    ['ISBLANK(A6)', false],
    ['ISBLANK(A9)', true],
    ['A5=1', '#N/A'],
    ['1<>2', true],
    ['2>=2', true],
    ['2<=1', false],
  ])('compares %s', async (formula, expected) => {
    expect(await formulaGives(formula, cells)).toEqual(expected);
  });

  it.each<[string, unknown]>([
    [
      'A1:B2*2',
      [
        [2, '#VALUE!'],
        [5, '#VALUE!'],
      ],
    ],
    ['A1:A2+C1:C2', [[46_083], [46_086]]],
    [
      '{1;2}+{10,20}',
      [
        [11, 21],
        [12, 22],
      ],
    ],
    ['{1;2;3}+{1;2}', [[2], [4], ['#N/A']]],
    ['A1:A6', [[1], [2.5], ['123'], [true], ['#N/A'], ['']]],
    ['A8:A9', [[0], [0]]],
    ['A9', 0],
    ['IF(A1:A2>1,"y","n")', [['n'], ['y']]],
    ['IFERROR(A1:A5/1,0)', [[1], [2.5], [123], [1], [0]]],
    ['CHOOSE({1,2},"x","y")', [['x', 'y']]],
    ['SUM({1,2;3,4}*{1;2})', 17],
    ['SUMPRODUCT(--(A1:A2>1),A1:A2)', 2.5],
    [
      'TRANSPOSE(A1:B2)',
      [
        [1, 2.5],
        ['a', 'b'],
      ],
    ],
    [
      'SEQUENCE(2,2)',
      [
        [1, 2],
        [3, 4],
      ],
    ],
    ['SORT(A1:A2,1,-1)', [[2.5], [1]]],
    ['FILTER(A1:B2,A1:A2>1)', [[2.5, 'b']]],
    ['UNIQUE({1;1;2})', [[1], [2]]],
    [
      'HSTACK(A1:A2,B1:B2)',
      [
        [1, 'a'],
        [2.5, 'b'],
      ],
    ],
  ])('spreads %s', async (formula, expected) => {
    expect(await formulaGives(formula, cells)).toEqual(expected);
  });

  it.each<[string, unknown]>([
    ['IF(A9="","blank","no")', 'blank'],
    ['IF(TRUE,1)', 1],
    ['IF(FALSE,1)', false],
    ['IF(FALSE,1,)', 0],
    ['IF(,1,2)', 2],
    ['IF("x",1,2)', '#VALUE!'],
    ['IF("true",1,2)', 1],
    ['IF(A5,1,2)', '#N/A'],
    ['IF(TRUE,1,QT.NOPE())', 1],
    ['IFS(FALSE,1,TRUE,2)', 2],
    ['IFS(FALSE,1)', '#N/A'],
    ['SWITCH(2,1,"a",2,"b","c")', 'b'],
    ['SWITCH(9,1,"a",2,"b","c")', 'c'],
    ['SWITCH(9,1,"a")', '#N/A'],
    ['IFERROR(A5,"e")', 'e'],
    ['IFNA(1/0,"e")', '#DIV/0!'],
    ['IFNA(A5,"e")', 'e'],
    ['CHOOSE(2,"x","y")', 'y'],
    ['CHOOSE(3,"x","y")', '#VALUE!'],
    ['LET(c,A1:A2,INDEX(c,2)*10)', 25],
    ['LET(x,1,y,x+1,x*10+y)', 12],
    ['LET(x,1,LET(x,2,x)+x)', 3],
    ['LAMBDA(a,b,a+b)(1,2)', 3],
    ['LET(f,LAMBDA(x,x*2),f(f(3)))', 12],
    ['LAMBDA(x,x)', '#CALC!'],
    ['LAMBDA(x,x)(1,2)', '#VALUE!'],
    ['MAP({1,2,3},LAMBDA(x,x*2))', [[2, 4, 6]]],
    ['MAP({1,2},{10,20},LAMBDA(x,y,x+y))', [[11, 22]]],
    ['REDUCE(0,A1:A2,LAMBDA(a,b,a+b))', 3.5],
    ['SCAN(0,{1,2,3},LAMBDA(a,b,a+b))', [[1, 3, 6]]],
    ['BYROW(A1:B2,LAMBDA(r,COUNTA(r)))', [[2], [2]]],
    ['BYCOL(A1:B2,LAMBDA(c,INDEX(c,2)))', [[2.5, 'b']]],
    [
      'MAKEARRAY(2,2,LAMBDA(r,c,r*10+c))',
      [
        [11, 12],
        [21, 22],
      ],
    ],
  ])('chooses and calls in %s', async (formula, expected) => {
    expect(await formulaGives(formula, cells)).toEqual(expected);
  });

  it.each<[string, unknown]>([
    ['INDEX({1,2;3,4},0,2)', [[2], [4]]],
    ['INDEX(A1:B2,2)', [[2.5, 'b']]],
    ['INDEX(A1:B1,2)', 'a'],
    ['INDEX(A1:A3,5)', '#REF!'],
    ['INDEX(A:A,5000)', 0],
    ['INDEX(5,1,1)', 5],
    ['INDEX(A1:A3,-1)', '#VALUE!'],
    ['INDEX(A1:A3,{1;2})', [[1], [2.5]]],
    ['A1:INDEX(A:A,2)', [[1], [2.5]]],
    ['SUM(A1:INDEX(A:A,2))', 3.5],
    ['OFFSET(A1,1,0)', 2.5],
    [
      'OFFSET(A1,0,0,2,2)',
      [
        [1, 'a'],
        [2.5, 'b'],
      ],
    ],
    ['OFFSET(A2,0,0,-2)', [[1], [2.5]]],
    ['OFFSET(A1,-1,0)', '#REF!'],
    ['OFFSET(1,0,0)', '#VALUE!'],
    ['INDIRECT("A2")', 2.5],
    ["INDIRECT(\"'Dad''s tank'!A1\")", 77],
    ['INDIRECT("nowhere!A1")', '#REF!'],
    ['INDIRECT("band")', 'x'],
    ['INDIRECT("")', '#REF!'],
    ["'Dad''s tank'!A1", 77],
    ["'DAD''S TANK'!a1", 77],
    ['Łóg_2!A1', 5],
    ['nowhere!A1', '#REF!'],
    ['SUM(A1:A2 A2:A3)', 2.5],
    ['SUM(A1 B1)', '#NULL!'],
    ['ROW()', 1],
    ['COLUMN()', 26],
    ['ROW(A5)', 5],
    ['ROW(A2:A3)', [[2], [3]]],
    ['ROWS(A:A)', 1_048_576],
    ['COLUMNS(A1:C1)', 3],
    ['ROWS({1;2})', 2],
    ['ISREF(A1)', true],
    ['ISREF(1)', false],
    ['SUM(C:C)', 92_165.5],
    ['MAX(2:2)', 46_083.5],
    ['COUNTA(B:B)', 2],
    ['@{1,2}', 1],
    ['#REF!', '#REF!'],
    ['SUM(#REF!)', '#REF!'],
  ])('finds the cells of %s', async (formula, expected) => {
    const sheets = { "Dad's tank": { A1: 77 }, Łóg_2: { A1: 5 } };
    const names = [{ name: 'band', formula: "'Dad''s tank'!$C$9" }];
    const withBand = { ...sheets, "Dad's tank": { A1: 77, C9: 'x' } };
    expect(await formulaGives(formula, cells, { sheets: withBand, names })).toEqual(expected);
  });

  it.each<[string, unknown]>([
    ['SUM(A1:A4)', 3.5],
    ['SUM("3",TRUE)', 4],
    ['SUM(A1:A5)', '#N/A'],
    ['SUM(1,,2)', 3],
    ['SUM(A3)', 0],
    ['SUM("x")', '#VALUE!'],
    ['SUM(LAMBDA(x,x))', '#VALUE!'],
    ['SUM()', 0],
    ['MIN(A1:A2,-1)', -1],
    ['MIN(B1:B2)', 0],
    ['MAX(A1:A4)', 2.5],
    ['AVERAGE(B1:B2)', '#DIV/0!'],
    ['AVERAGE(A1:A2,)', 3.5 / 3],
    ['COUNT(A1:A9,"3","x",TRUE)', 4],
    ['COUNTA(A1:A9)', 6],
    ['COUNTA(A9,)', 1],
    ['AVERAGE(A1:A2)', 1.75],
    ['COUNT(A1:A9)', 2],
    ['COUNTBLANK(A1:A9)', 4],
    ['COUNTIF(A1:A2,">1")', 1],
    ['COUNTIFS(B1:B2,"*")', 2],
    ['SUMIF(B1:B2,"b",A1:A2)', 2.5],
    ['SUMIF(B1:B2,"b",A1)', 2.5],
    ['SUMIFS(A1:A2,B1:B2,"b")', 2.5],
    ['MAXIFS(A1:A2,B1:B2,"b")', 2.5],
    ['ROUND(1.005,2)', 1.01],
    ['MOD(-1,3)', 2],
    ['INT(-1.5)', -2],
    ['XLOOKUP("b",B1:B2,A1:A2)', 2.5],
    ['XLOOKUP("z",B1:B2,A1:A2,"none")', 'none'],
    ['VLOOKUP("b",B1:C2,2,FALSE)', 46_083.5],
    ['MATCH(2.5,A1:A2,0)', 2],
    ['RANK(2.5,A1:A2)', 1],
    ['TEXT(C1,"yyyy-mm-dd")', '2026-03-01'],
    ['TEXT(C2,"d mmm yyyy hh:mm")', '2 Mar 2026 12:00'],
    ['TEXT(1234.567,"#,##0.00")', '1,234.57'],
    ['TEXT(0.256,"0.0%")', '25.6%'],
    ['TEXT(1.5,"[h]:mm")', '36:00'],
    ['TEXTJOIN(", ",TRUE,B1:B3)', 'a, b'],
    ['DATE(2026,3,1)', 46_082],
    ['YEAR(C1)', 2026],
    ['HOUR(C2)', 12],
    ['ISNUMBER(A3)', false],
    ['ISTEXT(A3)', true],
    ['ISNA(A5)', true],
    ['AND(TRUE,A1=1)', true],
    ['NOT(A4)', false],
    ['LEN(A3)', 3],
    ['N(A4)', 1],
    ['T(A3)', '123'],
  ])('calls the usual function of %s', async (formula, expected) => {
    expect(await formulaGives(formula, cells)).toEqual(expected);
  });

  it('looks up again and again without mixing tables up', async () => {
    expect(await formulaGives('COUNTIF(A1:A2,1)&COUNTIF(A2:A3,1)&COUNTIF(A1:A2,1)', cells)).toBe('101');
    const column = { A1: 1, A2: 1, A3: 2, B1: 2, B2: 2, B3: 2 };
    expect(await formulaGives('COUNTIF(A1:A3,2)*10+COUNTIF(B1:B3,2)', column)).toBe(13);
    expect(await formulaGives('SUM(--({1;2;3}=2))+SUM(--({2;2;3}=2))', column)).toBe(3);
  });

  it('tells the time it is given', async () => {
    expect(await formulaGives('NOW()')).toBe(46_100.5);
    expect(await formulaGives('TODAY()')).toBe(46_100);
    expect(await formulaGives('TEXT(NOW(),"yyyy-mm-dd hh:mm")')).toBe('2026-03-19 12:00');
  });

  it.each([
    ['FOO(1)', 'calls FOO, which is not supported here'],
    ['SUBTOTAL(9,A1:A2)', 'calls SUBTOTAL, which is not supported here'],
    ['CELL("row",A1)', 'calls CELL, which is not supported here'],
    ['QT.NOPE(1)', 'calls QT.NOPE, and no function has this name'],
    ['chelated', 'uses the name chelated, which is not known here; put a text in quotes'],
    ['[1]Log!A1', 'reads [1]Log!A1, in another file or in several sheets at once'],
    ['SUM(Log:Card!A1)', 'reads Log:Card!A1, in another file or in several sheets at once'],
    ['SUM((A1,A2))', 'joins ranges with a comma, which is not supported here'],
    ['1+', 'lacks a value at its end'],
  ])('says that it cannot work out %s', async (formula, reason) => {
    expect(await formulaGives(formula, cells)).toBe(`kept: the formula ${reason}`);
  });
});
