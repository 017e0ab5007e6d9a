import { formulaOfOds } from '../../../src/sheet/ods/formulaOfOds';

describe('formulaOfOds', () => {
  it.each([
    ['of:=SUM([.A1:.B2];[.$C$3])', 'SUM(A1:B2,$C$3)'],
    ['of:=[Log.A1]+[$Log.$A$1]', 'Log!A1+Log!$A$1'],
    [`of:=[$'My ''log'.A1:.B2]`, `'My ''log'!A1:B2`],
    ["of:=['2026'.A1]+['A1'.B1]+[Größe.C1]", "'2026'!A1+'A1'!B1+Größe!C1"],
    ['of:=SUM([Jan.A1:Feb.B2])', 'SUM(Jan:Feb!A1:B2)'],
    ['of:=SUM([.A:.A];[.2:.3])', 'SUM(A:A,2:3)'],
    ['of:=[.#REF!]+[$#REF!.A1]', '#REF!+#REF!'],
    [`of:=['file:///home/x;y.ods'#$Log.A1]`, `'[file:///home/x;y.ods]Log'!A1`],
    ['of:="a;b~c|[.A1]"&[.A1]', '"a;b~c|[.A1]"&A1'],
    ['of:="say ""a;b"""', '"say ""a;b"""'],
    ['of:=SUM({1;2|3;4};5)', 'SUM({1,2;3,4},5)'],
    ['of:=SUM([.A1]~[.B2])+SUM([.A1:.B2]![.B1:.B3])', 'SUM(A1,B2)+SUM(A1:B2 B1:B3)'],
    ['of:=_xldudf_qt_holddays([.A1])', '_xldudf_QT_HOLDDAYS(A1)'],
    ['of:=_XLFN._XLWS.sort([.A1])', '_xlfn._xlws.SORT(A1)'],
    ['of:=qt.holddays ([.A1];rate)', 'QT.HOLDDAYS (A1,rate)'],
    ['of:=COM.MICROSOFT.CONCAT([.A1])+LEGACY.NORMSDIST(1)', 'CONCAT(A1)+NORMSDIST(1)'],
    ['oooc:=SUM([.A1];1)', 'SUM(A1,1)'],
    ['=SUM([.A1];1)', 'SUM(A1,1)'],
    ['msoxl:=SUM(A1;1)', 'SUM(A1;1)'],
    ['', ''],
  ])('%s', (stored, formula) => {
    expect(formulaOfOds(stored)).toBe(formula);
  });

  it.each(['"', "['", '[', 'a', '" "', "['a'", 'a (', '{', '""x'])(
    'takes no longer for many of %j than for few',
    (piece) => {
      const start = performance.now();
      formulaOfOds(`of:=${piece.repeat(100_000)}`);
      expect(performance.now() - start).toBeLessThan(5000);
    },
  );
});
