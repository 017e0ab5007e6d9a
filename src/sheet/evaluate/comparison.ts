import { isCellError, type CellError, type CellValue } from '../cell/cellValue.js';

type Plain = Exclude<CellValue, CellError>;

const order = new Intl.Collator('en', { sensitivity: 'accent' });

/**
 * Below 0, 0 or above 0 as a formula compares two cells: numbers before texts before truths, texts in any case alike, a
 * blank like the emptiest value of the other's kind.
 */
export function comparison(left: CellValue, right: CellValue): number | CellError {
  if (isCellError(left)) return left;
  if (isCellError(right)) return right;
  const [a, b] = [filled(left, right), filled(right, left)];
  if (typeof a === 'string' && typeof b === 'string') {
    return a.toLowerCase() === b.toLowerCase() ? 0 : order.compare(a, b);
  }
  if (typeof a !== typeof b) return rank(a) - rank(b);
  return Number(a) - Number(b);
}

function filled(value: Plain, other: Plain): number | string | boolean {
  if (value !== null) return value;
  return typeof other === 'string' ? '' : typeof other === 'boolean' ? false : 0;
}

function rank(value: number | string | boolean): number {
  return typeof value === 'number' ? 0 : typeof value === 'string' ? 1 : 2;
}
