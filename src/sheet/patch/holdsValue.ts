import { isCellError, type CellValue } from '../cell/cellValue.js';
import { serialOfIso } from '../book/serialOfIso.js';
import { unescapedText } from '../xlsx/unescapedText.js';
import { storedError } from '../cell/storableValue.js';
import type { CellAt } from './sheetMap.js';

/** Whether the cell, as it is stored, holds the value already. */
export function holdsValue(cell: CellAt, value: CellValue, sharedText: (index: number) => string | undefined): boolean {
  const type = cell.attributes['t'] ?? 'n';
  const stored = type === 'inlineStr' ? cell.inline?.text : cell.value?.text;
  // Spaces around a number say nothing, and an empty <v> of a number is a blank.
  const plain = stored?.trim() ?? '';
  const isBlank = stored === undefined || (plain === '' && !['str', 'inlineStr'].includes(type));
  if (isBlank || value === null) return isBlank && value === null;
  if (isCellError(value)) {
    // A rich error shows another name than the stored one.
    return type === 'e' && plain === storedError(value.basicValue) && cell.attributes['vm'] === undefined;
  }
  if (typeof value === 'boolean') return type === 'b' && isTrue(plain) === value;
  if (typeof value === 'number') return (type === 'd' ? serialOfIso(plain) : type === 'n' && Number(plain)) === value;
  if (type === 's') return sharedText(Number(plain)) === value;
  return (type === 'str' || type === 'inlineStr') && unescapedText(stored ?? '') === value;
}

function isTrue(text: string): boolean {
  return text === '1' || text === 'true';
}
