import { isDateFormat } from '../../../src/sheet/book/isDateFormat';

describe('isDateFormat', () => {
  it.each([
    'yyyy-mm-dd',
    'yyyy\\-mm\\-dd hh:mm',
    'd.m.',
    'mmm',
    'mm/yy',
    'dddd',
    '[$-409]d-mmm-yy;@',
    'YYYY',
    'hh:mm dd',
    'hh" o\'clock "mmm',
  ])('%s shows a day', (format) => {
    expect(isDateFormat(format)).toBe(true);
  });

  it.each([
    undefined,
    'General',
    '0.00',
    'hh:mm',
    'mm:ss',
    '[h]:mm',
    '[mm]:ss',
    'h:mm AM/PM',
    '0 "days"',
    '[Red]0.0',
    '0\\d',
    '@',
    '# ?/?',
    '0.00E+00',
    '_d0',
    '*d0',
  ])('%s shows none', (format) => {
    expect(isDateFormat(format)).toBe(false);
  });
});
