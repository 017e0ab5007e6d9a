import { bookLimits } from '../bookLimits.js';
import type { XmlAttributes } from '../xml/readXml.js';

/** Widest digit of the usual letters, in pixels: column widths count in it. */
const digitWidth = 7;

/** Writes the width of the columns that an element `col` speaks of, in pixels. */
export function putColumnWidths(widths: (number | undefined)[], attributes: XmlAttributes): void {
  const width = Number(attributes['width'] ?? NaN);
  const first = Number(attributes['min'] ?? NaN);
  const last = Math.min(Number(attributes['max'] ?? NaN), bookLimits.columns);
  if (!(width >= 0 && width <= 255 && first >= 1 && first <= last)) return;
  const pixels = Math.trunc(((256 * width + Math.trunc(128 / digitWidth)) / 256) * digitWidth);
  for (let column = first; column <= last; column++) widths[column - 1] = pixels;
}
