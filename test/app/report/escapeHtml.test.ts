import fc from 'fast-check';
import { parseHTML } from 'linkedom';
import { escapeHtml } from '../../../src/app/report/escapeHtml.js';

describe('escapeHtml', () => {
  it('makes every sign of markup a text', () => {
    expect(escapeHtml(`<script>alert("1")</script> & 'x' \``)).toBe(
      '&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; &#39;x&#39; &#96;',
    );
    expect(escapeHtml('&lt;b&gt;')).toBe('&amp;lt;b&amp;gt;');
  });

  it('writes out what turns the direction of writing or is not seen', () => {
    const unseen = [
      '\u202e',
      '\u202a',
      '\u2066',
      '\u2069',
      '\u200e',
      '\u200f',
      '\u061c',
      '\u200b',
      '\ufeff',
      '\u00ad',
      '\u2028',
    ];
    for (const mark of [...unseen, '\u0000', '\u001b', '\u0085', '\u{e0041}', '\ud800']) {
      const code = mark.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0');
      expect(escapeHtml(`a${mark}b`)).toBe(`a[U+${code}]b`);
    }
  });

  it('leaves plain text, letters of all scripts, line ends and whole emoji as they are', () => {
    const text = 'Kaltbach µg/L “x” 水槽\t12 %\nتجربة 🐟👩‍🔬 é';
    expect(escapeHtml(text)).toBe(text);
  });

  it('gives any text back as one text, in content and in an attribute', () => {
    const { document } = parseHTML('<!doctype html><html><body></body></html>');
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...`<>"'&\`=/ abs\u00e9-!;`) }), (text) => {
        document.body.innerHTML = `<p title="${escapeHtml(text)}">${escapeHtml(text)}</p>`;
        const [first, ...more] = Array.from(document.body.querySelectorAll('*'));
        expect([first?.tagName, more.length, first?.textContent, first?.getAttribute('title')]).toEqual([
          'P',
          0,
          text,
          text,
        ]);
      }),
      { seed: 7, numRuns: 300 },
    );
  });
});
