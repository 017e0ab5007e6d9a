import { isCellError, type CellError, type CellValue } from '../cell/cellValue.js';
import { numberInText } from './numberInText.js';
import { errorCell } from './value.js';

/** A cell as a number to reckon with: a blank is 0, TRUE 1, a text the number or time it spells. */
export function cellNumber(value: CellValue): number | CellError {
  if (typeof value === 'number') return value;
  if (value === null) return 0;
  if (typeof value === 'boolean') return value ? 1 : 0;
  if (isCellError(value)) return value;
  return numberInText(value) ?? errorCell('#VALUE!');
}
