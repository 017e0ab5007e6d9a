import type { CellWrite } from './cellWrite.js';

/** The writes of each sheet, in their order. */
export function writesBySheet(writes: readonly CellWrite[]): Map<string, CellWrite[]> {
  const found = new Map<string, CellWrite[]>();
  for (const write of writes) {
    const ofSheet = found.get(write.sheet);
    if (ofSheet) ofSheet.push(write);
    else found.set(write.sheet, [write]);
  }
  return found;
}
