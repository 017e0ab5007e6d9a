import type { CellRange } from '../address/cellRange.js';
import type { CellWrite } from '../patch/cellWrite.js';
import { callsOurs } from '../sheetFormula/callsOurs.js';
import { formulaAsStored } from '../sheetFormula/formulaAsStored.js';

/** A formula of the grid, with its `=`, as a file holds it: what spills, and every call of ours, as an array that may grow. */
export function storedForm(
  formula: string,
  spills: CellRange | undefined,
): Pick<CellWrite, 'formula' | 'fills' | 'dynamic'> {
  const typed = formula.replace(/^=/, '');
  const stored = formulaAsStored(typed);
  if (spills === undefined && !callsOurs(typed)) return { formula: stored };
  return { formula: stored, dynamic: true, ...(spills === undefined ? {} : { fills: spills }) };
}
