import { numberText } from './numberText.js';

/**
 * A program that separates fields with another character may see a field begin in the middle of ours. A plus or minus
 * there is a dash or the sign of a number, unless something follows that can call or fetch.
 */
const formulaWithin = String.raw`'*(?:[=@\uff1d\uff20]|[+\-\uff0b\uff0d][^,;\t\r\n(|!]*[(|!])`;
const openGap = new RegExp(String.raw`([,;|\t\r\n][" \u00a0]*)(?=${formulaWithin})`, 'g');

/** A text that no spreadsheet program takes for a formula: an apostrophe precedes whatever would begin one. */
export function guardedText(text: string): string {
  const guarded = text.replace(openGap, "$1'");
  return startsFormula(guarded) ? `'${guarded}` : guarded;
}

const guardedGap = new RegExp(String.raw`([,;|\t\r\n][" \u00a0]*)'(?=${formulaWithin})`, 'g');

/** The text that `guardedText` wrote; any other text as it is. */
export function unguardedText(text: string): string {
  if (!text.includes("'")) return text;
  const rest = text.slice(1);
  return (text.startsWith("'") && startsFormula(rest) ? rest : text).replace(guardedGap, '$1');
}

// What a spreadsheet program begins a formula with, the wide letters too.
const start = /^[\s']*[=+\-@\uff0b\uff0d\uff1d\uff20]|^'*[\t\r]/;

/** Whether a program could take a text for a formula, also after it has dropped a leading apostrophe. */
export function startsFormula(text: string): boolean {
  return start.test(text) && numberText(text) === null;
}
