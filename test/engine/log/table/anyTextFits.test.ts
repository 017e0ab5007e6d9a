import { anyTextFits } from '../../../../src/engine/log/table/anyTextFits.js';

describe('anyTextFits', () => {
  it('says whether a text fits, and asks once for each', () => {
    const asked: string[] = [];
    const fits = (text: string): boolean => {
      asked.push(text);
      return text === 'ich noted';
    };
    expect(anyTextFits(['', 'rinsed', 'rinsed', '', 'wiped'], fits)).toBe(false);
    expect(asked).toEqual(['rinsed', 'wiped']);
    expect(anyTextFits(['', 'rinsed', 'ich noted'], fits)).toBe(true);
  });

  it('finds nothing in a column that is not there', () => {
    expect(anyTextFits(null, () => true)).toBe(false);
  });
});
