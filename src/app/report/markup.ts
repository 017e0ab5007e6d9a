import { startsFormula } from '../../sheet/index.js';
import { escapeHtml } from './escapeHtml.js';

/** HTML known to be well formed: made by `markup`, or drawn by us. */
export class Markup {
  constructor(readonly html: string) {}
}

type Content = string | number | Markup | readonly Markup[];

/** HTML from a template; anything put into it that is not markup itself is escaped. */
export function markup(parts: TemplateStringsArray, ...contents: readonly Content[]): Markup {
  return new Markup(parts.reduce((html, part, index) => html + htmlOf(contents[index - 1] ?? '') + part));
}

function htmlOf(content: Content): string {
  if (content instanceof Markup) return content.html;
  if (typeof content === 'object') return content.map(({ html }) => html).join('\n');
  return escapeHtml(String(content));
}

/** A dash alone, or a number, however its digits are set apart. */
const plain = /^[-+]?[\d.,\s]*$/;

/** A text for a cell of the report, in quotation marks if a spreadsheet would take it for a formula. */
export function quotedText(text: string | number): string {
  const written = String(text);
  return startsFormula(written) && !plain.test(written) ? `“${written}”` : written;
}
