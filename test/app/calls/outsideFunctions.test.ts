import { outsideFunctions } from '../../../src/app/calls/outsideFunctions';
import { bundle } from '../../sheet/recalc/testBook';

describe('outsideFunctions', () => {
  const outside = outsideFunctions(bundle);

  it('claims every name of the namespace, also an unknown one', () => {
    const names = ['QT.BAND', 'QT.NOSUCH', 'BAND', 'STDEV.P', 'QTX.BAND'];
    expect(names.filter((name) => outside.has(name))).toEqual(['QT.BAND', 'QT.NOSUCH']);
  });

  it('says what every function gives, and nothing of an unknown one', () => {
    for (const { entry } of bundle) expect(outside.columns(`QT.${entry.id}`)).toBeDefined();
    expect(outside.columns('QT.HOLDENDS')).toBe('time');
    expect(outside.columns('QT.NOSUCH')).toBeUndefined();
  });

  it('calls a known function, and throws for an unknown one', () => {
    expect(outside.call('QT.BAND', ['amine'], 'Log!A1')).toEqual({ kind: 'table', rows: [[0.45, 0.55]] });
    expect(outside.call('QT.BAND', ['ionic'], 'Log!A1')).toMatchObject({ kind: 'error', code: '#VALUE!' });
    expect(() => outside.call('QT.NOSUCH', [], 'Log!A1')).toThrow('there is no function QT.NOSUCH');
  });
});
