import { sheetLimits } from '../address/sheetLimits.js';

/** The size of a sheet as the file formats know it, and what a book may hold here. */
export const bookLimits = {
  ...sheetLimits,
  /** Cells with a value or a formula, in all sheets together. */
  cells: 8_000_000,
  /** Characters of shared formulas, written out for each cell: a file holds such a formula once. */
  sharedFormulas: 64 * 1024 * 1024,
  /** Entries of any other list, such as merged ranges, names or formats: no workbook has more. */
  listed: 200_000,
} as const;
