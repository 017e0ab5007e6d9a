import { lossRateColumns, lossRateTable } from '../../../src/engine/text/waterTables.js';

describe('lossRateTable', () => {
  it.each([
    ['absorbs', 'absorbs'],
    ['rises', 'rises'],
    ['no-loss-shown', 'no loss shown'],
  ] as const)('says %s as the contract does', (verdict, words) => {
    expect(lossRateTable({ percentADay: 2, low: 1, high: 3, rSquared: 0.9, verdict })).toEqual({
      columns: lossRateColumns,
      rows: [[2, 1, 3, 0.9, words]],
    });
  });

  it('leaves R² empty where there is none, and every number with too few readings', () => {
    const flat = { percentADay: 0, low: 0, high: 0, rSquared: null, verdict: 'no-loss-shown' } as const;
    expect(lossRateTable(flat).rows).toEqual([[0, 0, 0, '', 'no loss shown']]);
    expect(lossRateTable({ verdict: 'too-few-readings' })).toEqual({
      columns: lossRateColumns,
      rows: [['', '', '', '', 'too few readings']],
    });
  });
});
