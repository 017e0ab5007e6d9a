/** `"A"` is 0, `"AA"` 26. */
export function columnNumber(letters: string): number {
  return [...letters.toUpperCase()].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}
