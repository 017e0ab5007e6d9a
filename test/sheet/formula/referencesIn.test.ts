import { addressRange } from '../../../src/sheet/address/addressOf';
import { referencesIn } from '../../../src/sheet/formula/referencesIn';

function ranges(formula: string): string[] {
  return referencesIn(formula).ranges.map(({ sheet, range }) => `${sheet ?? ''}!${addressRange(range)}`);
}

describe('referencesIn', () => {
  it('lists the ranges of the text', () => {
    expect(ranges("SUM(A1,$B$2:$C$3,'My log'!D4)")).toEqual(['!A1:A1', '!B2:C3', 'My log!D4:D4']);
    expect(ranges('A:B')).toEqual(['!A1:B1048576']);
    expect(ranges('3:4')).toEqual(['!A3:XFD4']);
    expect(ranges('B9:A1')).toEqual(['!A1:B9']);
    expect(ranges('"A1"&#REF!')).toEqual([]);
  });

  it('says where there can be more', () => {
    for (const formula of ['OFFSET(A1,1,1)', 'INDIRECT("A1")', 'A1:INDEX(A:A,3)', 'SUM(G1#)', 'unknown', '[1]Log!A1'])
      expect(referencesIn(formula).more).toBe(true);
    for (const formula of ['SUM(A1)', 'LET(x,A1,x+1)', 'QT.BAND("amine")'])
      expect(referencesIn(formula).more).toBe(false);
  });
});
