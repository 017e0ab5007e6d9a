/**
 * The moment to look at. While example rows are in the log it is the last row of it, so that a new workbook shows answers;
 * without them it is the clock, so that nobody forgets to switch and no test seems fresher than it is.
 */
const formula = '=IF(COUNTIF(Log[By],"example*")>0,MAX(Log[Date and time]),NOW())';

const note =
  '=IF(COUNTIF(Log[By],"example*")>0,"the last row of the log, while example rows are in it; later the clock","now, by the clock of this machine")';

/** The formula of that moment, and one that says which it is. */
export const asOf = { formula, note } as const;

const below = 'COUNT({$Log!far down$})-COUNT(Log[Date and time])';

/** Says how many rows were written below the table, where no formula looks; empty where none were. */
export const rowsBelowTable = `=IF(${below}>0,${below}&" rows are below the table Log and are not read: drag its lower right corner down","all rows with a time are read: "&COUNT(Log[Date and time]))`;
