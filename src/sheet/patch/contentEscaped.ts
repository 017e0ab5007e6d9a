const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '\r': '&#13;' };

/** Text as the content of an element holds it. */
export function contentEscaped(text: string): string {
  return text.replace(/[&<>\r]/g, (character) => escapes[character] ?? character);
}
