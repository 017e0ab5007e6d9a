import { columnNumber } from '../address/cellKey.js';
import { sheetLimits } from '../address/sheetLimits.js';

/** Whether the cells of a reference can exist: `XFE1` and `A1048577` are names. */
export function isWithinSheet(reference: string): boolean {
  const address = reference.slice(reference.lastIndexOf('!', reference.length - 2) + 1);
  if (address.startsWith('#')) return true;
  const columns = address.match(/[A-Z]+/gi) ?? [];
  const rows = address.match(/\d+/g) ?? [];
  return (
    columns.every((letters) => columnNumber(letters) < sheetLimits.columns) &&
    rows.every((digits) => Number(digits) <= sheetLimits.rows)
  );
}
