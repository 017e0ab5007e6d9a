import { addressRange, type CellRange } from '../../sheet/index.js';

/** `Card!A1:B12`, the sheet's name in quotes where a formula would need them. */
export function rangeText(sheet: string, range: CellRange): string {
  const name =
    /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(sheet) && !/^[a-z]{1,3}\d+$/i.test(sheet)
      ? sheet
      : `'${sheet.replace(/'/g, "''")}'`;
  return `${name}!${addressRange(range)}`;
}

interface WrittenRange {
  /** undefined: the range stands alone. */
  readonly sheet: string | undefined;
  /** Such as `A1:B12`, `A1` or `A:B`, in capital letters and without dollar signs. */
  readonly cells: string;
}

const written =
  /^(?:(?:'((?:[^']|'')+)'|([^'!]+))!)?(\$?[a-z]{1,3}(?:\$?[1-9]\d*)?(?::\$?[a-z]{1,3}(?:\$?[1-9]\d*)?)?)$/i;

/** `Card!A1:B12`, `A1:B12` or `'My card'!$A:$B` in its parts; undefined for anything else. */
export function rangeParts(text: string): WrittenRange | undefined {
  const [, quoted, plain, cells] = written.exec(text.trim()) ?? [];
  if (cells === undefined) return undefined;
  return { sheet: quoted?.replace(/''/g, "'") ?? plain?.trim(), cells: cells.replace(/\$/g, '').toUpperCase() };
}
