import { callsOurs, type CellRange, type CellWrite, formulaAsStored } from '../../sheet/index.js';

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
