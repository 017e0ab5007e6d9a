import { parseFormula } from '../../../../src/app/calls/formula/parseFormula.js';

const read = (text: string): unknown => {
  const formula = parseFormula(text);
  return formula.ok ? [formula.value.name, ...formula.value.given] : formula.problem;
};

describe('parseFormula', () => {
  it.each([
    ['=QT.BAND("chelated")', ['BAND', 'chelated']],
    ['qt.band( "chelated" )', ['BAND', 'chelated']],
    ['BAND("chelated")', ['BAND', 'chelated']],
    ['=QT.CAUTIONS()', ['CAUTIONS']],
    ['=QT.CAUTIONS( )', ['CAUTIONS']],
    ['=QT.DOSE(200,0,2.25,10)', ['DOSE', 200, 0, 2.25, 10]],
    ['=QT.RISE(-1,+2,.5,3.,1e3,2.5E-2)', ['RISE', -1, 2, 0.5, 3, 1000, 0.025]],
    ['=QT.CHANGESTOCLEAR(2, 0.01, 25%)', ['CHANGESTOCLEAR', 2, 0.01, 0.25]],
    ['=QT.MGPERL("say ""ppm"", please")', ['MGPERL', 'say "ppm", please']],
    ['=QT.MGPERL("")', ['MGPERL', '']],
    ['=QT.MGPERL(TRUE)', ['MGPERL', true]],
    ['=QT.MGPERL(false)', ['MGPERL', false]],
    ['=QT.MGPERL(#N/A)', ['MGPERL', { type: 'Error', basicValue: '#N/A' }]],
    [
      '=QT.HOLDDAYS({46082;46083},{2.1;"<0.05"},{0.15,0.2})',
      ['HOLDDAYS', [[46082], [46083]], [[2.1], ['<0.05']], [[0.15, 0.2]]],
    ],
    [
      '=QT.HOLDDAYS({ 1 , "a" ; 2 , TRUE },1,"x",,46085)',
      [
        'HOLDDAYS',
        [
          [1, 'a'],
          [2, true],
        ],
        1,
        'x',
        undefined,
        46085,
      ],
    ],
    ['=QT.DOSE(1,,)', ['DOSE', 1, undefined, undefined]],
    ['=QT.DOSE(,1)', ['DOSE', undefined, 1]],
  ])('reads %s', (text, expected) => {
    expect(read(text)).toEqual(expected);
  });

  it.each([
    ['', 1, 'write a function and its arguments'],
    ['=QT.DOSE', 2, 'character 2, QT.DOSE: write a function and its arguments'],
    ['=QT.DOSE(200,0', 15, 'the formula ends: write a comma or the closing bracket'],
    ['=QT.DOSE(200', 13, 'the formula ends: write a comma or the closing bracket'],
    ['=QT.DOSE(200;0)', 13, 'character 13, ;0): write a comma'],
    ['=QT.DOSE(A2,0)', 10, 'there is no sheet to look in'],
    ['=QT.HOLDDAYS(Log!$A$2:$A$60,1)', 14, 'there is no sheet to look in'],
    ['=QT.HOLDDAYS(A:A,1)', 14, 'there is no sheet to look in'],
    ['=QT.DOSE(NOW(),0)', 10, 'a function within a function'],
    ['=QT.BAND("chelated)', 10, 'the text has no closing quote'],
    ['=QT.BAND(chelated)', 10, 'write a number, "text", TRUE'],
    ['=QT.BAND("a" "b")', 14, 'write a comma or the closing bracket'],
    ['=QT.HOLDDAYS({1,2;3},1)', 20, 'row 2 of the array has 1 cells, the first 2'],
    ['=QT.HOLDDAYS({1,,2},1)', 17, 'write a number'],
    ['=QT.HOLDDAYS({1;{2}},1)', 17, 'write a number'],
    ['=QT.HOLDDAYS({1;2', 18, 'write a comma, a semicolon or }'],
    ['=QT.RISE(1e999)', 15, 'too large'],
    ['=QT.RISE(1,2)+3', 14, 'the formula ends before this'],
    ['=QT.RISE(1,2))', 14, 'the formula ends before this'],
  ])('says where %s cannot be read', (text, at, message) => {
    const fault = read(text) as { at: number; message: string };
    expect(fault).toEqual({ at, message: expect.stringContaining(message) as string });
    expect(fault.message.length).toBeLessThan(160);
  });
});
