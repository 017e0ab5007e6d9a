import { xmlText } from '../../sheet/index.js';

/** What ends the value of an attribute; a backtick does so in old browsers. */
const quotes: Readonly<Record<string, string>> = { '"': '&quot;', "'": '&#39;', '`': '&#96;' };

/**
 * What may not stand in a text unseen: control characters, marks that turn the direction of writing, invisible spaces, and
 * halves of a character. Tabs and line ends may.
 */
const unseen =
  // eslint-disable-next-line no-control-regex -- these are the ones meant
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u00ad\u061c\u180e\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb]|[\u{e0000}-\u{e007f}]|\p{Surrogate}/gu;

/** A text as HTML that shows it and does nothing else; what would not be seen is written out, such as `[U+202E]`. */
export function escapeHtml(text: string): string {
  const seen = text.replace(
    unseen,
    (character) => `[U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}]`,
  );
  return xmlText(seen).replace(/["'`]/g, (quote) => quotes[quote] ?? '');
}
