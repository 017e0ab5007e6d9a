import { isInside } from '../../sheet/index.js';
import type { FoundLog } from '../logs/found.js';

export interface Selected {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/**
 * The log to plot: the one under the selection; else the first one of the sheet; else the one plotted before, if it is
 * still there; else the first one of the workbook.
 */
export function chosenLog(
  logs: readonly FoundLog[],
  selected: Selected | undefined,
  before: FoundLog | undefined,
): FoundLog | undefined {
  const here = logs.filter(({ sheet }) => sheet === selected?.sheet);
  const under = here.find(({ range }) => selected !== undefined && isInside(range, selected.row, selected.column));
  const again = logs.find((log) => log.sheet === before?.sheet && log.range.firstRow === before.range.firstRow);
  return under ?? (again !== undefined && here.includes(again) ? again : here[0]) ?? again ?? logs[0];
}
