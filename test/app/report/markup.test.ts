import { Markup, markup } from '../../../src/app/report/markup.js';

describe('markup', () => {
  it('escapes what is put into it, but for markup', () => {
    const item = markup`<li>${'<b>'} ${2}</li>`;
    expect(item.html).toBe('<li>&lt;b&gt; 2</li>');
    expect(markup`<ul>${[item, item]}</ul>`.html).toBe(`<ul>${item.html}\n${item.html}</ul>`);
    expect(markup`${new Markup('<svg/>')}${''}`.html).toBe('<svg/>');
  });
});
