import { copyName } from '../../../src/app/page/copyName.js';

describe('copyName', () => {
  it('names a copy after its original, in its format or another', () => {
    expect(copyName('March tank.xlsm')).toBe('March tank copy.xlsm');
    expect(copyName('a.b.csv', '.xlsx')).toBe('a.b copy.xlsx');
    expect(copyName('log')).toBe('log copy.xlsx');
    expect(copyName('.ods')).toBe('.ods copy.xlsx');
  });
});
