/** Control characters, and marks that change the direction in which text is shown. */
// eslint-disable-next-line no-control-regex -- these are what is looked for
const unprintable = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069]/g;

/** Text of a file as a terminal may show it: nothing in it can move the cursor, colour the screen or turn the line round. */
export function printable(text: string): string {
  return text.replace(unprintable, '\u{fffd}');
}

/** The same on one line, such as a formula that somebody broke into several. */
export function oneLine(text: string): string {
  return printable(text.replace(/\s*[\r\n]+\s*/g, ' '));
}
