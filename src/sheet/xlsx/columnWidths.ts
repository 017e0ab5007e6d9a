import { sheetLimits } from '../address/sheetLimits.js';
import type { CellLook } from '../book/cellLook.js';
import type { XmlAttributes } from '../xml/walkXml.js';

/** Width of a font's digits relative to its size, from memory; other fonts are close to the usual width. */
const usual = 0.507;
const widths: readonly (readonly [fonts: RegExp, width: number])[] = [
  [/^(?:arial|helvetica|liberation sans|arimo)$/i, 0.556],
  [/^(?:times new roman|liberation serif|tinos)$/i, 0.5],
  [/^(?:courier new|liberation mono|consolas|cousine)$/i, 0.6],
  [/^(?:verdana|dejavu sans)$/i, 0.636],
  [/^(?:cambria|tahoma|segoe ui|noto sans|open sans|roboto)$/i, 0.555],
];
const usualSize = 11;
const pixelsOfAPoint = 96 / 72;

/** The widest digit of a workbook's default font in whole pixels: the unit of its column widths. */
export function digitWidth(plain: CellLook | undefined): number {
  const [, width] = widths.find(([fonts]) => fonts.test(plain?.font ?? '')) ?? ['', usual];
  return Math.max(1, Math.round(width * (plain?.size ?? usualSize) * pixelsOfAPoint));
}

/**
 * Writes the width of the columns that an element `col` describes, in pixels.
 *
 * @param digit the widest digit in pixels, the unit of column widths
 */
export function putColumnWidths(widths: (number | undefined)[], attributes: XmlAttributes, digit: number): void {
  const width = Number(attributes['width'] ?? NaN);
  const first = Number(attributes['min'] ?? NaN);
  const last = Math.min(Number(attributes['max'] ?? NaN), sheetLimits.columns);
  if (!(width >= 0 && width <= 255 && first >= 1 && first <= last)) return;
  const pixels = Math.trunc(((256 * width + Math.trunc(128 / digit)) / 256) * digit);
  for (let column = first; column <= last; column++) widths[column - 1] = pixels;
}
