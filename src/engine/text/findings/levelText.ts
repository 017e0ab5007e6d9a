import { shownNumber } from '../../units/shown.js';

/** A level to a thousandth. */
export function levelText(level: number): string {
  return `${shownNumber(Number(level.toFixed(3)))} mg/L`;
}
