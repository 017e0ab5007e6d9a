/** The names in one cell: commas, semicolons or new lines stand between them, save inside brackets ("Angel (large, blue)"). */
export function fishNames(text: string): readonly string[] {
  const names = bracketed(text) ?? text.split(/[,;\n\r]/);
  return names.map(oneLine).filter((name) => name !== '' && !nothing.has(name.toLowerCase()));
}

/** What people write where there is no fish. */
const nothing = new Set(['-', '–', 'none']);

/** Split outside brackets; undefined where brackets do not close. */
function bracketed(text: string): readonly string[] | undefined {
  const names: string[] = [];
  let depth = 0;
  let from = 0;
  for (let at = 0; at < text.length; at++) {
    const letter = text.charAt(at);
    if (letter === '(') depth++;
    else if (letter === ')' && depth > 0) depth--;
    else if (depth === 0 && /[,;\n\r]/.test(letter)) {
      names.push(text.slice(from, at));
      from = at + 1;
    }
  }
  return depth === 0 ? [...names, text.slice(from)] : undefined;
}

function oneLine(name: string): string {
  return name.replace(/[\s\p{Cc}\p{Cf}]+/gu, ' ').trim();
}
