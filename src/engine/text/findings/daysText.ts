import { secondDays } from '../../units/quantity.js';

/** Days to a tenth, rounded down: a day not yet over is none. */
export function daysText(days: number): string {
  const tenths = Math.floor((days + secondDays) * 10) / 10;
  return `${tenths.toFixed(1)} ${tenths === 1 ? 'day' : 'days'}`;
}
