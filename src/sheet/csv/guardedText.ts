import { startsFormula } from './startsFormula.js';

/**
 * A program that parts fields by another mark than the file's begins a field in the middle of ours. A plus or minus there
 * is a dash or a number, unless something follows that can call or fetch.
 */
export const formulaWithin = String.raw`'*(?:[=@\uff1d\uff20]|[+\-\uff0b\uff0d][^,;\t\r\n(|!]*[(|!])`;
const within = new RegExp(String.raw`([,;|\t\r\n][" \u00a0]*)(?=${formulaWithin})`, 'g');

/** A text that no spreadsheet program takes for a formula: an apostrophe stands before what would begin one. */
export function guardedText(text: string): string {
  const guarded = text.replace(within, "$1'");
  return startsFormula(guarded) ? `'${guarded}` : guarded;
}
