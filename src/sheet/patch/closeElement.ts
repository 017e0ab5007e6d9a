import type { ElementAt } from './sheetMap.js';
import type { EndTag } from './walkXml.js';

/** Notes where an element ends. */
export function closeElement(element: ElementAt, { from, to }: EndTag): void {
  element.contentTo = from;
  element.to = to;
}
