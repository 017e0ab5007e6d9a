/** How many, how big, which sex, how sure: words beside a name that do not change the kind of fish. */
const besideTheName = new Set(
  'x pair trio male female juvenile juv adult baby small medium large wild caught captive tank raised bred sp spp cf aff var'.split(
    ' ',
  ),
);
const amount = /^(?:x\d+|\d+(?:x|cm|mm|in|inch|inche)?)$/;

/**
 * The words of a name in the one form in which names are compared: lower case, no accents, hyphens or apostrophes,
 * singular, and without words of number, size, sex or doubt.
 */
export function nameWords(name: string): readonly string[] {
  return name
    .normalize('NFKD')
    .replace(/[\p{M}'’`´]/gu, '')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .map(singular)
    .filter((word) => word !== '' && !besideTheName.has(word) && !amount.test(word));
}

// Both sides of a comparison pass here, so a stem need not be a word: "wrasse" and "wrasses" are both "wrass".
function singular(word: string): string {
  if (word.length < 4) return word;
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  const one = /(?:ss|us|is)$/.test(word) ? word : word.replace(/s$/, '');
  return one.replace(/e$/, '');
}
