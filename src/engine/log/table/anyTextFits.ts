const known = new WeakMap<readonly string[], readonly string[]>();

/**
 * Whether any text of a column fits. The same few notes come again and again in a log: each is looked at once, and a rule
 * that looks for words which no text has need not go through the rows.
 */
export function anyTextFits(texts: readonly string[] | null, fits: (text: string) => boolean): boolean {
  return texts !== null && distinct(texts).some(fits);
}

function distinct(texts: readonly string[]): readonly string[] {
  const before = known.get(texts);
  if (before !== undefined) return before;
  const found = new Set<string>();
  for (const text of texts) if (text !== '') found.add(text);
  const each = [...found];
  known.set(texts, each);
  return each;
}
