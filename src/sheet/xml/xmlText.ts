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

/** Text as the content of an element holds it. */
export function xmlText(text: string): string {
  return text.replace(/[&<>\r]/g, (character) => escapes[character] ?? character);
}

/** Text as the value of an attribute holds it. */
export function xmlAttribute(text: string): string {
  return text.replace(/[&<>"'\t\n\r]/g, (character) => escapes[character] ?? character);
}

/** As a pattern, what cannot stand in XML: control characters, the two that are no characters, and halves of pairs. */
export const notInXml =
  '[\\u0000-\\u0008\\u000b\\u000c\\u000e-\\u001f\\ufffe\\uffff]|[\\ud800-\\udbff](?![\\udc00-\\udfff])|(?<![\\ud800-\\udbff])[\\udc00-\\udfff]';
