import type { Cell } from './cell.js';

const longest = 40;

/** The cell as a message repeats it: text in quotes and cut at 40 characters, numbers without binary noise. */
export function shown(cell: Cell): string {
  if (cell === null) return 'blank';
  if (typeof cell === 'number') return shownNumber(cell);
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  if (typeof cell === 'string') return `"${cut(oneLine(cell))}"`;
  if ('error' in cell) return `the error ${cut(cell.error)}`;
  return `${cell.cells} cells`;
}

/** A number to ten significant digits, trailing zeros dropped; one that no double holds as a bound. */
export function shownNumber(x: number): string {
  if (x === Infinity) return 'over 1e308';
  if (x === -Infinity) return 'under -1e308';
  const rounded = Number(x.toPrecision(10));
  // The largest doubles round to no double at all.
  return String(Number.isFinite(rounded) ? rounded : x);
}

function oneLine(text: string): string {
  return text.replace(/[\s\p{Cc}\p{Cf}]+/gu, ' ').trim();
}

function cut(text: string): string {
  const letters = Array.from(text);
  return letters.length <= longest ? text : `${letters.slice(0, longest - 1).join('')}…`;
}

/** A number to one decimal, half up; a tie that binary noise blurs is still one. */
export function oneDecimal(x: number): string {
  return (Math.round(x * 10 + 1e-6) / 10).toFixed(1);
}
