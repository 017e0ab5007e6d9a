import type { CellValue } from '../../sheet/index.js';

/** A number, or a text with digits in it such as "200 L". */
export function saysNumber(value: CellValue): boolean {
  return typeof value === 'number' || (typeof value === 'string' && /\d/.test(value));
}
