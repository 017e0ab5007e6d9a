import type { HoldAnswer } from './holdAnswer.js';
import { secondDays } from '../units/quantity.js';
import { shownNumber } from '../units/shown.js';

/** Days to a tenth, rounded down: a day not yet over is none. */
export function daysText(days: number): string {
  const tenths = Math.floor((days + secondDays) * 10) / 10;
  return `${tenths.toFixed(1)} ${tenths === 1 ? 'day' : 'days'}`;
}

/** The answer to whether the hold was long enough, in a few words. */
export function answerText({ kind, days }: HoldAnswer): string {
  return kind === 'not complete' ? 'not complete, no hold running' : `${kind}, ${daysText(days)}`;
}

/** A level to a thousandth, without its unit. */
export function levelNumber(level: number): string {
  return rounded(level, 3);
}

export function levelText(level: number): string {
  return `${levelNumber(level)} mg/L`;
}

/** A level to the places that its size deserves. */
export function nearLevelText(level: number): string {
  return `${rounded(level, level < 0.01 ? 5 : level < 1 ? 3 : 2)} mg/L`;
}

export function millilitresText(amount: number, places = 2): string {
  return `${rounded(amount, places)} mL`;
}

/** A share as a percentage. */
export function percentText(share: number): string {
  return `${rounded(100 * share, 1)} %`;
}

/** No trailing zeros. */
export function rounded(x: number, places = 2): string {
  return shownNumber(Number(x.toFixed(places)));
}

const mostRows = 8;

/** Rows by number; of many the first ones and how many more. */
export function rowsText(rows: readonly number[]): string {
  const shown = rows.slice(0, mostRows);
  if (rows.length <= 1) return `row ${shown.join('')}`;
  if (rows.length > mostRows) return `rows ${shown.join(', ')} and ${rows.length - mostRows} more`;
  return `rows ${shown.slice(0, -1).join(', ')} and ${shown[shown.length - 1] ?? ''}`;
}

/** The rows of which the same holds, in brackets. */
export function furtherRows(rows: readonly number[]): string {
  if (rows.length === 0) return '';
  const shown = rows.slice(0, 4).join(', ');
  return ` (also row${rows.length === 1 ? '' : 's'} ${shown}${rows.length > 4 ? ` and ${rows.length - 4} more` : ''})`;
}

/** What a keeper wrote, on one line and cut to so many letters. */
export function cut(text: string, longest = 60): string {
  const letters = Array.from(text.replace(/\s+/g, ' ').trim());
  return letters.length <= longest ? letters.join('') : `${letters.slice(0, longest - 1).join('')}…`;
}

export function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

const cardinals = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const ordinals = ['', 'whole', 'half', 'third', 'quarter', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'];

/** A small whole number in letters. */
export function cardinal(count: number): string {
  return cardinals[count] ?? String(count);
}

/** A part in letters: of 10 a tenth. */
export function ordinal(parts: number): string {
  return ordinals[parts] ?? `${rounded(100 / parts, 1)} %`;
}
