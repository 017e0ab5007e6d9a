import { escapeHtml } from './escapeHtml.js';

/** HTML that is in order: made by `markup`, or drawn by us. */
export class Markup {
  constructor(readonly html: string) {}
}

type Content = string | number | Markup | readonly Markup[];

/** HTML from a template; whatever is put into it and is no markup itself is escaped. */
export function markup(parts: TemplateStringsArray, ...contents: readonly Content[]): Markup {
  return new Markup(parts.reduce((html, part, index) => html + htmlOf(contents[index - 1] ?? '') + part));
}

function htmlOf(content: Content): string {
  if (content instanceof Markup) return content.html;
  if (typeof content === 'object') return content.map(({ html }) => html).join('\n');
  return escapeHtml(String(content));
}
