import { entered, withoutEquals } from '../../../src/sheet/cell/formulaText';
import { formulaAsStored } from '../../../src/sheet/formula/formulaAsStored';
import { formulaAsTyped } from '../../../src/sheet/formula/formulaAsTyped';

const outside = { has: (name: string) => name.startsWith('QT.') };

/** Typed, then stored. */
const pairs: readonly (readonly [string, string])[] = [
  ['QT.HOLDDAYS(A2:A9,B2:B9,"chelated")', '_xldudf_QT_HOLDDAYS(A2:A9,B2:B9,"chelated")'],
  ['IFERROR(INDEX(QT.HOLDS(A2:A9,B2:B9,C1:D1),2,1),"")', 'IFERROR(INDEX(_xldudf_QT_HOLDS(A2:A9,B2:B9,C1:D1),2,1),"")'],
  ['FILTER(A1:A9,B1:B9>1)', '_xlfn._xlws.FILTER(A1:A9,B1:B9>1)'],
  ['SORT(UNIQUE(A1:A9))', '_xlfn._xlws.SORT(_xlfn.UNIQUE(A1:A9))'],
  ['XLOOKUP(1,A:A,B:B)', '_xlfn.XLOOKUP(1,A:A,B:B)'],
  ['LET(x,A1:A9,INDEX(X,2)*x)', '_xlfn.LET(_xlpm.x,A1:A9,INDEX(_xlpm.X,2)*_xlpm.x)'],
  ['LET(f,LAMBDA(a,b,a+b),f(1,2))', '_xlfn.LET(_xlpm.f,_xlfn.LAMBDA(_xlpm.a,_xlpm.b,_xlpm.a+_xlpm.b),_xlpm.f(1,2))'],
  ['SUM(G1#)', 'SUM(_xlfn.ANCHORARRAY(G1))'],
  ["SUM('My log'!$G$1#)+1", "SUM(_xlfn.ANCHORARRAY('My log'!$G$1))+1"],
  ['@A1:A9*2', '_xlfn.SINGLE(A1:A9)*2'],
  ['@INDEX(A1:B9,2,0)', '_xlfn.SINGLE(INDEX(A1:B9,2,0))'],
  ['Log[@Copper]*2', 'Log[[#This Row],[Copper]]*2'],
  ['Log[@[Copper mg/L]]', 'Log[[#This Row],[Copper mg/L]]'],
  ['Log[@[When]:[Copper]]', 'Log[[#This Row],[When]:[Copper]]'],
  ["Log[@[Copper '[mg/L']]]", "Log[[#This Row],[Copper '[mg/L']]]"],
  ['QT.AUDIT(Log[#All],Card!A1:B12)', '_xldudf_QT_AUDIT(Log[#All],Card!A1:B12)'],
  ['SUM(x)+x', 'SUM(x)+x'],
  ['"QT.BAND(1) and _xlfn.LET"&A1', '"QT.BAND(1) and _xlfn.LET"&A1'],
];

describe('formulaAsTyped', () => {
  it.each(pairs)('gives %s', (typed, stored) => {
    expect(formulaAsTyped(stored, outside)).toBe(typed);
  });

  it('knows every spelling of our names', () => {
    expect(formulaAsTyped('qt.band("amine")', outside)).toBe('QT.BAND("amine")');
    expect(formulaAsTyped('_xldudf_qt_band("amine")', outside)).toBe('QT.BAND("amine")');
    expect(formulaAsTyped('_xlfn._xldudf_QT_BAND("amine")', outside)).toBe('QT.BAND("amine")');
  });

  it('leaves functions of others alone', () => {
    expect(formulaAsTyped('_xldudf_OTHER_BAND(1)', outside)).toBe('_xldudf_OTHER_BAND(1)');
  });

  it('reads what nobody can read as it stands', () => {
    expect(formulaAsTyped('_xlfn.ANCHORARRAY(G1', outside)).toBe('G1#');
    expect(formulaAsTyped('SUM("open', outside)).toBe('SUM("open');
  });
});

describe('the forms of a formula', () => {
  it('do not pass for each other', () => {
    const stored = formulaAsStored('QT.BAND(1)', outside);
    const typed = formulaAsTyped(stored, outside);
    // @ts-expect-error: a stored formula is not typed
    const asTyped: typeof typed = stored;
    // @ts-expect-error: one with its = is not one without
    const withoutIt: typeof typed = entered(typed);
    expect([asTyped, withoutIt, withoutEquals(entered(typed))]).toEqual([stored, `=${typed}`, typed]);
  });
});

describe('formulaAsStored', () => {
  it.each(pairs)('takes %s', (typed, stored) => {
    expect(formulaAsStored(typed, outside)).toBe(stored);
    expect(formulaAsStored(`=${typed}`, outside)).toBe(stored);
    expect(formulaAsTyped(formulaAsStored(typed, outside), outside)).toBe(typed);
  });

  it('leaves a stored formula as it is', () => {
    for (const [, stored] of pairs) expect(formulaAsStored(stored, outside)).toBe(stored);
  });

  it('puts our names into capitals', () => {
    expect(formulaAsStored('=qt.Band("amine")', outside)).toBe('_xldudf_QT_BAND("amine")');
  });
});
