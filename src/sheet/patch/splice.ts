import type { ElementAt } from '../xml/elementAt.js';
import { tagWith } from './tagWith.js';

/** `text` in the place of what stands from `from` up to `to`. */
export interface Splice {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** The text after its splices; at one place, pure insertions come first, in the order given. */
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

/** An element with more content at its end, and some of its attributes set. */
export function withEntry(
  xml: string,
  element: ElementAt,
  entry: string,
  attributes: Readonly<Record<string, string>> = {},
): Splice[] {
  const { name, from, tagTo, contentTo, to } = element;
  const tag = tagWith(xml.slice(from, tagTo), attributes);
  if (tag.endsWith('/>')) return [{ from, to, text: `${tag.replace(/\s*\/>$/, '>')}${entry}</${name}>` }];
  return [
    { from, to: tagTo, text: tag },
    { from: contentTo, to: contentTo, text: entry },
  ];
}
