import type { CellValue } from '../../sheet/index.js';

const timeFormat = 'yyyy-mm-dd hh:mm';
const functionsGivingTimes = new Set(['HOLDSTART', 'HOLDENDS', 'OBSERVEUNTIL']);
const headingsOfTimes = new Set(['When', 'From', 'To', 'By', 'Since', 'Arrived', 'Ready on', 'Came in', 'Last test']);

/**
 * The number format of one cell of an answer, where it is a time: a serial number in an unformatted cell would say nothing.
 * @param heading The heading above the cell, for a table.
 */
export function answerFormat(id: string, heading: CellValue | undefined): string {
  const isTime = functionsGivingTimes.has(id) || (typeof heading === 'string' && headingsOfTimes.has(heading));
  return isTime ? timeFormat : '';
}
