import { numberText } from './numberText.js';

// What a spreadsheet program begins a formula with, the wide letters too.
const start = /^[\s']*[=+\-@\uff0b\uff0d\uff1d\uff20]|^'*[\t\r]/;

/** Whether a program could take a text for a formula, or would once an apostrophe in front is gone. */
export function startsFormula(text: string): boolean {
  return start.test(text) && numberText(text) === null;
}
