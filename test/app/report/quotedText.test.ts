import { quotedText } from '../../../src/app/report/markup.js';

describe('quotedText', () => {
  it('puts into quotation marks what a spreadsheet would take for a formula', () => {
    for (const text of ['=1+1', '=HYPERLINK("a")', '+cmd', '-tang', '@sum', '\t=1', '\r=1'])
      expect(quotedText(text)).toBe(`“${text}”`);
  });

  it('leaves words and plain numbers', () => {
    for (const text of ['', 'tank = 2', '-', '-2.5', '+3', '2 fish']) expect(quotedText(text)).toBe(text);
    expect(quotedText(-4)).toBe('-4');
  });
});
