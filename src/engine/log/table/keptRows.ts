import type { Cell } from '../../units/cell.js';
import { isBlank } from '../../units/cell.js';
import { headingKey } from '../headings/columnKinds.js';
import type { LogRange } from './logRange.js';

const totals = /^(?:sub|grand )?totals?\b|^(?:sum|average|avg|mean|count)\b/;

/** The rows below the headings that say something: from 0, in the order in which they stand. */
export function keptRows(log: LogRange, headingRow: number, timeColumn: number): Uint32Array {
  const { range, cellOf } = log;
  const headings = (range[headingRow] ?? []).map((raw) => textKey(cellOf(raw)));
  const kept = new Uint32Array(range.length);
  let count = 0;
  for (let row = headingRow + 1; row < range.length; row++) {
    const cells = range[row] ?? [];
    if (
      typeof cells[timeColumn] === 'number'
        ? cells[timeColumn] === 0 && isLeftOut(cells, headings, cellOf)
        : isLeftOut(cells, headings, cellOf)
    ) {
      continue;
    }
    kept[count++] = row;
  }
  return kept.slice(0, count);
}

/** Blank, the headings once more, or a line of totals. */
function isLeftOut(raw: readonly unknown[], headings: readonly string[], cellOf: (raw: unknown) => Cell): boolean {
  const cells = raw.map(cellOf);
  const first = cells.find((cell) => !isBlank(cell));
  if (first === undefined) return true;
  if (cells.every((cell) => isBlank(cell) || cell === 0)) return true;
  if (typeof first !== 'string') return false;
  if (totals.test(textKey(first))) return true;
  const texts = cells.map(textKey);
  return texts.filter((text, column) => text !== '' && text === headings[column]).length >= 2;
}

function textKey(cell: Cell): string {
  return typeof cell === 'string' ? headingKey(cell) : '';
}
