import { callsOutside } from '../../../src/sheet/formula/functionName';

const outside = { has: (name: string) => name.startsWith('QT.') };

describe('callsOutside', () => {
  it.each([
    'QT.BAND("amine")',
    'qt.band("amine")',
    '_xldudf_QT_BAND("amine")',
    '_xldudf_qt_band("amine")',
    '_xlfn._xldudf_QT_BAND("amine")',
    'IF(A1="","",Qt.MgPerL(A1))',
    '1+QT.RISE(1,2,3)',
  ])('sees the call in %s', (formula) => {
    expect(callsOutside(formula, outside)).toBe(true);
  });

  it.each([
    'SUM(A1)',
    '"QT.BAND(1)"',
    'QT.BAND',
    'QTX.BAND(1)',
    'MYQT.BAND(1)',
    "'QT.BAND(1)'!A1",
    'Log[QT.BAND(1)]',
    '',
  ])('sees none in %s', (formula) => {
    expect(callsOutside(formula, outside)).toBe(false);
  });
});
