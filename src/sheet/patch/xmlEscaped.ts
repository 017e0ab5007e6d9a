const escapes: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&apos;',
  '\t': '&#9;',
  '\n': '&#10;',
  '\r': '&#13;',
};

/** Text as an attribute value holds it, and as the content of an element may. */
export function xmlEscaped(text: string): string {
  return text.replace(/[&<>"'\t\n\r]/g, (character) => escapes[character] ?? character);
}
