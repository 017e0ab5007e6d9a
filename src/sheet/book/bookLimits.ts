import { sheetLimits } from '../address/sheetLimits.js';

/** The size of a sheet as the file formats know it, and what a book may hold here. */
export const bookLimits = {
  ...sheetLimits,
  /** Cells with a value or a formula, in all sheets together. */
  cells: 8_000_000,
  /** Characters of formulas that stand once in the file and are spelt out for every cell that shares them. */
  sharedFormulas: 64 * 1024 * 1024,
  /** Merged ranges of a sheet, columns with a width, names, formats: what no workbook has more of. */
  listed: 200_000,
} as const;
