/** What people write where there is no fish. */
const nothing = new Set(['-', '–', 'none']);

/**
 * The names in one cell. Commas, semicolons or new lines stand between them, save inside brackets ("Angel (large,
 * blue)") and within a number ("2,5 cm").
 */
export function fishNames(text: string): readonly string[] {
  return (apart(text, true) ?? apart(text, false) ?? []).filter((name) => !nothing.has(name.toLowerCase()));
}

/** The parts between separators; undefined where brackets are minded but do not close. */
function apart(text: string, mindBrackets: boolean): readonly string[] | undefined {
  const parts: string[] = [];
  let depth = 0;
  let from = 0;
  for (let at = 0; at <= text.length; at++) {
    const letter = text.charAt(at);
    if (mindBrackets && letter === '(') depth++;
    else if (letter === ')' && depth > 0) depth--;
    else if (at === text.length || (depth === 0 && separates(text, at))) {
      const name = oneLine(text.slice(from, at));
      if (name !== '') parts.push(name);
      from = at + 1;
    }
  }
  return depth === 0 ? parts : undefined;
}

function separates(text: string, at: number): boolean {
  const letter = text.charAt(at);
  if (letter === ',') return !(isDigit(text.charAt(at - 1)) && isDigit(text.charAt(at + 1)));
  return letter === ';' || letter === '\n' || letter === '\r';
}

function isDigit(letter: string): boolean {
  return letter >= '0' && letter <= '9';
}

function oneLine(name: string): string {
  return name.replace(/[\s\p{Cc}\p{Cf}]+/gu, ' ').trim();
}
