const letters = 'zero one two three four five six seven eight nine ten eleven twelve'.split(' ');

/** How many a clause speaks of: the number nearest before or after the words, in digits or in letters; null: none. */
export function wordCount(low: string, from: number, to: number): number | null {
  const before = low.slice(Math.max(0, from - 40), from);
  const around = low.slice(Math.max(0, from - 3), to + 14);
  if (/\bhalf (?:a )?dozen\b/.test(low)) return 6;
  if (/\b(?:a )?dozen\b/.test(low)) return 12;
  if (/\b(?:pair|pr|couple|both)\b/.test(low)) return 2;
  const numbers = [...before.matchAll(number), ...around.matchAll(number)];
  const said = numbers.map(([word]) => valueOf(word)).filter((value) => value < 200);
  return said[0] ?? (/\b(?:a|an|another|one)\b/.test(before) ? 1 : null);
}

const number =
  /(?<![\d.,:#-])\b(?:\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)\b(?![\d:.,%]*(?:\d| ?(?:mg|ml|ppm|%|h\b|hours?|days?|min|cm|am|pm|l\b|gal)))/g;

function valueOf(word: string): number {
  const at = letters.indexOf(word);
  return at >= 0 ? at : Number(word);
}
