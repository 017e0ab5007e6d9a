import type { ElementAt } from './sheetMap.js';
import type { Splice } from './splice.js';
import { tagWith } from './tagWith.js';

/** A list with one more entry at its end, its attribute `count` set. */
export function grownList(xml: string, list: ElementAt, entry: string, count: number): Splice[] {
  const tag = tagWith(xml.slice(list.from, list.tagTo), { count: String(count) });
  if (tag.endsWith('/>')) {
    return [{ from: list.from, to: list.to, text: `${tag.replace(/\s*\/>$/, '>')}${entry}</${list.name}>` }];
  }
  return [
    { from: list.from, to: list.tagTo, text: tag },
    { from: list.contentTo, to: list.contentTo, text: entry },
  ];
}
