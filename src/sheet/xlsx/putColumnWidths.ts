import { bookLimits } from '../book/bookLimits.js';
import type { XmlAttributes } from '../xml/walkXml.js';

/**
 * Writes the width of the columns that an element `col` speaks of, in pixels.
 *
 * @param digit the widest digit of the workbook's letters in pixels, which column widths count in
 */
export function putColumnWidths(widths: (number | undefined)[], attributes: XmlAttributes, digit: number): void {
  const width = Number(attributes['width'] ?? NaN);
  const first = Number(attributes['min'] ?? NaN);
  const last = Math.min(Number(attributes['max'] ?? NaN), bookLimits.columns);
  if (!(width >= 0 && width <= 255 && first >= 1 && first <= last)) return;
  const pixels = Math.trunc(((256 * width + Math.trunc(128 / digit)) / 256) * digit);
  for (let column = first; column <= last; column++) widths[column - 1] = pixels;
}
