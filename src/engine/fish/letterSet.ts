/** The letters of a text as a set of 32 bits, whatever their order and number. */
export function letterSet(text: string): number {
  let letters = 0;
  for (let at = 0; at < text.length; at++) letters |= 1 << (text.charCodeAt(at) & 31);
  return letters;
}

/** At least so many letters must change to turn one text into another: a bound that costs nothing beside the distance itself. */
export function lettersApart(one: number, other: number): number {
  return Math.max(bits(one & ~other), bits(other & ~one));
}

// Neighbouring bits are added in pairs, fours and bytes; the product gathers the bytes' counts in the highest.
function bits(set: number): number {
  const pairs = set - ((set >>> 1) & 0x55555555);
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}
