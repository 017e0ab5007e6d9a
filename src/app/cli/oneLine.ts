import { printable } from './printable.js';

/** Text of a file on one line, such as a formula that somebody broke into several. */
export function oneLine(text: string): string {
  return printable(text.replace(/\s*[\r\n]+\s*/g, ' '));
}
