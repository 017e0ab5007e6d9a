/** A stretch of a text that says one thing. */
export interface Clause {
  /** As written. */
  readonly raw: string;
  /** In small letters, with plain apostrophes; as long as `raw`. */
  readonly low: string;
  /** Where it begins in the text. */
  readonly from: number;
  /** Clauses of one sentence share a number. */
  readonly sentence: number;
  /** What stands between it and the clause before: '' at the start of a sentence. */
  readonly joint: string;
}

/** A clause longer than this is cut at a space, so that reading takes time in proportion to the text. */
const longest = 400;

const joints =
  /([.!?]+(?=[\s"')]|$)|[;\n…]+|\.\.\.+)|(,(?!\d)|:(?!\d)|\s[-–—](?=\s)|\s(?:but|then|so|though|although|because|since i|cuz|except|while|whereas)(?=\s)|\sand(?= (?:i|he|she|it|they|we|put|added|dosed|ended|now|took|no|not|still)\b)|\s\/(?=\s))/g;

/** A text in clauses: sentences end at points, and in them commas, colons, dashes and joining words begin a new clause. */
export function clausesOf(text: string): readonly Clause[] {
  const plain = text.toLowerCase().length === text.length ? text.toLowerCase() : text;
  const low = plain.replace(/[’‘`]/g, "'");
  const clauses: Clause[] = [];
  let from = 0;
  let sentence = 0;
  let joint = '';
  const add = (to: number): void => {
    if (text.slice(from, to).trim() === '') return;
    for (const { at, end } of pieces(low, from, to)) {
      clauses.push({ raw: text.slice(at, end), low: low.slice(at, end), from: at, sentence, joint });
    }
  };
  for (const match of low.matchAll(joints)) {
    if (match[1] !== undefined && isAbbreviation(low.slice(Math.max(0, match.index - 8), match.index))) continue;
    if (match[0] === ':' && isTopic(low.slice(from, match.index))) continue;
    add(match.index);
    from = match.index + (match[1] === undefined && /\w$/.test(match[0]) ? 0 : match[0].length);
    if (match[1] === undefined) joint = match[0].trim();
    else {
      // A question belongs to its sentence as little as the next one does, but what follows it answers it.
      sentence++;
      joint = '';
    }
  }
  add(low.length);
  return clauses;
}

function pieces(low: string, from: number, to: number): readonly { readonly at: number; readonly end: number }[] {
  const found: { at: number; end: number }[] = [];
  let at = from;
  while (to - at > longest) {
    const space = low.lastIndexOf(' ', at + longest);
    const end = space > at ? space : at + longest;
    found.push({ at, end });
    at = end;
  }
  return [...found, { at, end: to }];
}

/** "Ozone: no", "Blue: one dead": a word or two and what is said of it. */
function isTopic(before: string): boolean {
  return before.trim().split(/\s+/).length <= 3;
}

function isAbbreviation(before: string): boolean {
  return /\b(?:approx|dr|mr|mrs|no|nr|vs|ca|e\.g|i\.e|st|c|h|r)$/.test(before);
}
