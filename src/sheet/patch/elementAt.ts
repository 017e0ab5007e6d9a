import type { ElementAt } from './sheetMap.js';
import type { StartTag } from './walkXml.js';

/** An element whose start tag was met; its end comes with the end tag. */
export function elementAt({ name, attributes, from, to }: StartTag): ElementAt {
  return { name, attributes, from, tagTo: to, contentTo: to, to };
}
