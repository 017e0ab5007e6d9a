import { addressRange, type CellRange } from '../../sheet/index.js';

/** `Card!A1:B12`, the sheet's name in quotes where a formula would need them. */
export function rangeText(sheet: string, range: CellRange): string {
  const name =
    /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(sheet) && !/^[a-z]{1,3}\d+$/i.test(sheet)
      ? sheet
      : `'${sheet.replace(/'/g, "''")}'`;
  return `${name}!${addressRange(range)}`;
}
