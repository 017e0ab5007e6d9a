import type { BookSheet } from '../../sheet/index.js';

/** Whether a cell shows nothing. */
export function isBlankCell(sheet: BookSheet, row: number, column: number): boolean {
  const value = sheet.rows[row]?.[column]?.value ?? null;
  return value === null || (typeof value === 'string' && value.trim() === '');
}
