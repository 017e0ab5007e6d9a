/** `text` in the place of what stands from `from` up to `to`. */
export interface Splice {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** The text with its splices made; of several at one place, those that only put in come first, in the order given. */
export function spliced(text: string, splices: readonly Splice[]): string {
  const ordered = [...splices].sort((one, other) => one.from - other.from || one.to - other.to);
  const pieces: string[] = [];
  let done = 0;
  for (const { from, to, text: piece } of ordered) {
    if (from < done) throw new Error(`two splices meet at ${from}`);
    pieces.push(text.slice(done, from), piece);
    done = to;
  }
  pieces.push(text.slice(done));
  return pieces.join('');
}
