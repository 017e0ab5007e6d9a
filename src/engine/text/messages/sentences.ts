import type { Problem, Place } from '../../result/problem.js';

/** Each code's own problem. */
export type ByCode = { readonly [C in Problem['code']]: Extract<Problem, { readonly code: C }> };

/** One sentence for each code, written from that problem's own data. */
export type Sentences = { readonly [C in keyof ByCode]: (problem: ByCode[C]) => string };

/** How a sentence begins: `row 12:` for a cell of a range, the argument's name for an argument. */
export function place(at: Place): string {
  return 'row' in at ? `row ${at.row}:` : at.field;
}

const longest = 100;

/** Words to choose from, quoted; what would make the sentence too long is left out. */
export function listed(words: readonly string[]): string {
  const quoted = words.map((word) => `"${word}"`);
  const last = quoted[quoted.length - 1] ?? '';
  const whole = quoted.length < 2 ? last : `${quoted.slice(0, -1).join(', ')} or ${last}`;
  if (whole.length <= longest) return whole;
  let shown = '';
  for (const word of quoted) {
    if (shown.length + word.length + 2 > longest) break;
    shown += `${word}, `;
  }
  return `${shown}and so on`;
}
