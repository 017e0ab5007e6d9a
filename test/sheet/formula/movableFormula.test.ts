import { movableFormula } from '../../../src/sheet/formula/movableFormula';

describe('movableFormula', () => {
  it.each([
    ['A1+$A1+A$1+$A$1', 'C4+$A4+C$1+$A$1'],
    ['SUM(A1:B2)', 'SUM(C4:D5)'],
    ['SUM(A:B)+SUM($A:B)+SUM(1:2)+SUM($1:2)', 'SUM(C:D)+SUM($A:D)+SUM(4:5)+SUM($1:5)'],
    ['LOG10(A1)+ATAN2(A1,B1)', 'LOG10(C4)+ATAN2(C4,D4)'],
    ['"A1 ""B2"""&A1', '"A1 ""B2"""&C4'],
    ["'A1 B2'!A1+'it''s A1'!A1", "'A1 B2'!C4+'it''s A1'!C4"],
    ['Q1!A1+Sheet1!B2+Jan:Feb!A1', 'Q1!C4+Sheet1!D5+Jan:Feb!C4'],
    ['[1]Log!A1', '[1]Log!C4'],
    ['[1]!ADD12(A1)', '[1]!ADD12(C4)'],
    ['[1]Log!rate', '[1]Log!rate'],
    [
      'SUM(Readings[A1])+Readings[[#This Row],[B2]]+Readings[odd ' + "']" + ' A1]',
      'SUM(Readings[A1])+Readings[[#This Row],[B2]]+Readings[odd ' + "']" + ' A1]',
    ],
    ['rate_A1+A1.5+x.A1+größeA1', 'rate_A1+A1.5+x.A1+größeA1'],
    ['1E5+2.5E-3+1.5', '1E5+2.5E-3+1.5'],
    ['A1^2-A1%', 'C4^2-C4%'],
    ['_xldudf_QT_HOLDDAYS(A2:A9,B2:B9,"chelated")', '_xldudf_QT_HOLDDAYS(C5:C12,D5:D12,"chelated")'],
    ['_xlfn.ANCHORARRAY(G1)', '_xlfn.ANCHORARRAY(I4)'],
    ['TRUE+XFE1+AAAA1', 'TRUE+XFE1+AAAA1'],
    ['a1', 'C4'],
  ])('%s three rows down and two columns right', (formula, shifted) => {
    expect(movableFormula(formula)(3, 2)).toBe(shifted);
  });

  it('loses what would lie outside the sheet', () => {
    expect(movableFormula('A1+B2+A:A+1:1')(-1, -1)).toBe('#REF!+A1+#REF!+#REF!');
    expect(movableFormula('XFD1048576')(1, 0)).toBe('#REF!');
  });

  it.each(['"', "'", '[', "['", '[a', 'A1:', '$', '1:', '""x'])(
    'takes no longer for many of %j than for few',
    (piece) => {
      const start = performance.now();
      movableFormula(piece.repeat(100_000))(1, 1);
      expect(performance.now() - start).toBeLessThan(5000);
    },
  );
});
