interface Span {
  readonly from: number;
  readonly to: number;
}

/** Separators, and words after which another thing is said. */
const clauseEnd = /[.;!?\n]|\b(?:but|so|then|therefore|anyway|because)\b/gi;
const listed =
  /^(?:\s*[\w-]+(?:\s*,\s*(?:or\s+|and\s+|nor\s+)?|\s+(?:or|and|nor)\s+|\s*\/\s*)){0,4}(?:[\w-]+\s+){0,2}$/i;
const doing = /\b(?:added|adding|add|used|using|dosed|dosing|put|gave|poured|treated|applied|with)\b/i;
const noneOf = /\b(?:no|without|zero|0|avoid(?:ed|ing|s)?|instead of|rather than|free (?:of|from)|non)\b[ -]?/gi;
const notDoing =
  /\b(?:not|never|nor|neither|cannot|don'?t|do not|didn'?t|doesn'?t|won'?t|isn'?t|wasn'?t|haven'?t|hasn'?t|must ?n'?t|shouldn'?t)\b/gi;
const wordsBetween = 5;
const deniedAfter =
  /^\s*(?:-free\b|[:=]\s*(?:none|no|nil|0)\b|(?:\w+ ){0,1}(?:was|is|were|are|has been|have been)?\s*(?:not|never|n't|isn'?t|wasn'?t)\b(?: been)?(?: \w+)? ?(?:used|added|needed|dosed|necessary|in use|in it)\b)/i;

/**
 * Whether a word in a keeper's note is denied there: "no conditioner", "never use a dechlorinator", "no carbon, resin or
 * conditioner", "conditioner not used". "No ammonia, conditioner added" denies the ammonia alone.
 *
 * @param text the note
 * @param span where the word stands in it
 * @returns whether the note says that there is none
 */
export function isDenied(text: string, { from, to }: Span): boolean {
  const after = text.slice(to);
  if (deniedAfter.test(after)) return true;
  const before = clauseBefore(text.slice(0, from));
  const isDone = /^\s*(?:was |were )?(?:added|used|dosed)\b/i.test(after);
  for (const match of before.matchAll(noneOf)) {
    const between = before.slice(match.index + match[0].length);
    if (!doing.test(between) && listed.test(between) && !(isDone && between.includes(','))) return true;
  }
  for (const match of before.matchAll(notDoing)) {
    const between = before.slice(match.index + match[0].length);
    if (!between.includes(',') && between.trim().split(/\s+/).length <= wordsBetween) return true;
  }
  return false;
}

function clauseBefore(before: string): string {
  let start = 0;
  for (const match of before.matchAll(clauseEnd)) start = match.index + match[0].length;
  return before.slice(start);
}
