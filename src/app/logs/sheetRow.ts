import type { FoundLog } from './foundLog.js';

/** The sheet's row of the n-th row of a log's range, both as people count; findings count rows in the range. */
export function sheetRow({ log }: { readonly log: FoundLog }, row: number): number {
  return log.range.firstRow + row;
}
