import { addressOf } from '../../../src/sheet/address/addressOf.js';
import type { PlannedCell, SheetPlan } from '../../../src/app/templates/plan/templatePlan.js';

export interface Placed extends PlannedCell {
  readonly sheet: string;
}

/** What stands in a planned sheet. */
export const placed = ({ name, cells }: SheetPlan): Placed[] => cells.map((cell) => ({ ...cell, sheet: name }));

export const named = ({ sheet, row, column }: Placed): string => `${sheet}!${addressOf(row, column)}`;

export const isFormula = ({ content }: Placed): boolean => typeof content === 'string' && content.startsWith('=');

/** How many arguments a list has; a comma inside brackets or a text separates none. */
export function argumentCount(list: string): number {
  let [bare, before] = [list.replace(/"[^"]*"/g, '""').replace(/\[(?:\[[^\]]*\],?)+\]|\[[^\]]*\]/g, ''), ''];
  while (bare !== before) [bare, before] = [bare.replace(/\([^()]*\)/g, ''), bare];
  return bare === '' ? 0 : bare.split(',').length;
}
