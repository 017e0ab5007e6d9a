/**
 * The medicines in cells of text: names stand between commas, semicolons, plus signs, line breaks or the word and.
 *
 * Definition: each name once, in the order given; blank cells and "none" name no medicine.
 *
 * @param texts cells of text
 * @returns names as given
 * @example namedMedicines(['praziquantel, formalin', 'none']) // = ['praziquantel', 'formalin']
 */
export function namedMedicines(texts: readonly string[]): readonly string[] {
  const names = texts
    .flatMap((text) => text.split(/[,;+&\r\n]|\band\b/i))
    .map((name) => name.replace(/\s+/g, ' ').trim())
    .filter((name) => !/^(?:[-–—]*|none|no|nil)$/i.test(name));
  const seen = new Set<string>();
  return names.filter((name) => {
    const isNew = !seen.has(name.toLowerCase());
    seen.add(name.toLowerCase());
    return isNew;
  });
}
