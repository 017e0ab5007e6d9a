import { CellValueType, type ICellData } from '@univerjs/core';
import { type CellValue, isCellError } from '../../sheet/index.js';

/** A value as the sheet component holds it: texts that look like numbers stay texts. */
export function valueData(value: CellValue): ICellData {
  if (value === null) return {};
  if (typeof value === 'number') return { v: value, t: CellValueType.NUMBER };
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  if (isCellError(value)) return { v: value.basicValue, t: CellValueType.STRING };
  const looksLikeANumber = value.trim() !== '' && !Number.isNaN(Number(value));
  return { v: value, t: looksLikeANumber ? CellValueType.FORCE_STRING : CellValueType.STRING };
}
