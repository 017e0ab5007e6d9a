import type { BookSheet } from '../../sheet/index.js';

/** A name or a heading is no longer; a longer text is a sentence. */
const longest = 60;

/** A short text that somebody wrote into a cell, without spaces around it; '' for anything else. */
export function writtenText(sheet: BookSheet, row: number, column: number): string {
  const cell = sheet.rows[row]?.[column];
  if (cell === undefined || typeof cell.value !== 'string' || cell.formula !== undefined) return '';
  const text = cell.value.trim();
  return text.length <= longest ? text : '';
}
