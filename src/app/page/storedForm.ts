import {
  callsOutside,
  type CellRange,
  type CellWrite,
  type EnteredFormula,
  formulaAsStored,
} from '../../sheet/index.js';
import { qtNames } from '../calls/outsideFunctions.js';

/** A formula of the grid as a file holds it: what spills, and every call of a QT function, as an array that may grow. */
export function storedForm(
  formula: EnteredFormula,
  spills: CellRange | undefined,
): Pick<CellWrite, 'formula' | 'fills' | 'dynamic'> {
  const stored = formulaAsStored(formula, qtNames);
  if (spills === undefined && !callsOutside(stored, qtNames)) return { formula: stored };
  return { formula: stored, dynamic: true, ...(spills === undefined ? {} : { fills: spills }) };
}
