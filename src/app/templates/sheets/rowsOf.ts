import { serialOf } from '../demo/serialOf.js';
import type { Content } from '../plan/templatePlan.js';

/**
 * Rows written as lines, a column between two bars. A number is a number, a time such as `2026-03-01 08:00` a serial day,
 * nothing an empty cell.
 */
export function rowsOf(kept: string): Content[][] {
  return kept
    .trim()
    .split('\n')
    .map((line) => line.split('|').map((cell) => contentOf(cell.trim())));
}

function contentOf(written: string): Content {
  if (written === '') return null;
  if (/^\d{4}-\d\d-\d\d \d\d:\d\d$/.test(written)) return serialOf(written);
  return Number.isNaN(Number(written)) ? written : Number(written);
}
