import type { Problem } from '../../result/problem.js';
import { ok, refuse, type Result } from '../../result/result.js';
import { salinityFromSpecificGravity } from '../../seawater/salinityFromSpecificGravity.js';
import type { Cell } from '../../units/cell.js';
import { decimalText } from '../../units/decimalText.js';
import { celsius, specificGravity } from '../../units/quantity.js';
import { shown } from '../../units/shown.js';
import { columnNumber, type NumberColumn } from './columnNumbers.js';
import type { NumberKind } from './log.js';

export type ReadCell<T> = (cell: Cell, column: NumberColumn, row: number) => Result<T, Problem>;
type ReadNumber = ReadCell<number>;

/** A part of the tank's volume, 0 to 1. */
interface Share {
  readonly share: number;
}

/** How the cells of a column are read that are not plain numbers. */
export function numberReader(kind: NumberKind): ReadNumber {
  return readers[kind] ?? columnNumberIn;
}

const columnNumberIn: ReadNumber = (cell, column, row) => columnNumber(cell, column, { row });

/** Litres, or a share: "25%", or a bare number under a heading with a percent sign. */
export const readChange: ReadCell<number | Share> = (cell, column, row) => {
  const isPercentText = typeof cell === 'string' && cell.trim().endsWith('%');
  if (isPercentText || column.unit === '%') return shareOf(cell, row);
  const bare = bareNumber(cell);
  if (column.unit === null && bare > 0 && bare <= 1)
    return refuse({ code: 'share-of-volume', field: `row ${row}: change`, given: shown(cell) });
  return columnNumber(cell, column, { row });
};

/** NaN where a unit or anything else is written beside it. */
function bareNumber(cell: Cell): number {
  if (typeof cell === 'number') return cell;
  const number = typeof cell === 'string' ? decimalText(cell) : null;
  return number?.rest === '' ? number.value : NaN;
}

function shareOf(cell: Cell, row: number): Result<number | Share, Problem> {
  const text = typeof cell === 'string' ? decimalText(cell.replace('%', '')) : null;
  const isText = typeof cell === 'string' && cell.includes('%');
  const value = typeof cell === 'number' ? cell : text !== null && text.rest === '' && !text.unclear ? text.value : NaN;
  const share = !isText && value <= 1 ? value : value / 100;
  if (share >= 0 && share <= 1) return ok(share === 0 ? 0 : { share });
  return refuse({ code: 'not-a-value', at: { row }, given: shown(cell), kind: 'change' });
}

/** Specific gravity where the heading says so or the number can be nothing else, taken at 25 °C over 25 °C. */
const readSalinity: ReadNumber = (written, column, row) => {
  // Sea water has a specific gravity just above 1 and no salinity near 1,025: the comma is a decimal one.
  const cell = withPoint(written);
  const { unit, ...own } = column;
  const value = columnNumber(cell, { ...own, unit: unit === 'sg' ? null : unit }, { row });
  if (!value.ok || value.value < 0.99 || value.value > 1.04) return value;
  const salinity = salinityFromSpecificGravity({
    specificGravity: specificGravity(value.value),
    temperature: celsius(25),
    reference: celsius(25),
  });
  return salinity.ok
    ? salinity
    : refuse({ code: 'out-of-limits', at: { row }, given: shown(cell), limits: { min: 1, max: 1.032 }, unit: '' });
};

function withPoint(cell: Cell): Cell {
  return typeof cell === 'string' ? cell.replace(/^(\s*1),(0\d\d)(?!\d)/, '$1.$2') : cell;
}

/** No tank stands at 46 °C: a bare number above it is in °F. */
const readTemperature: ReadNumber = (cell, column, row) => {
  const bare = bareNumber(cell);
  return columnNumber(cell, column.unit === null && bare > 45 ? { ...column, unit: 'f' } : column, { row });
};

/** "matched" or "premixed" says that the new water had the tank's level. */
export const readReplacement: ReadCell<number | 'matched'> = (cell, column, row) =>
  typeof cell === 'string' && /\b(?:matched|premixed|same|yes)\b/i.test(cell)
    ? ok('matched')
    : columnNumber(cell, column, { row });

const readers: Partial<Record<NumberKind, ReadNumber>> = {
  salinity: readSalinity,
  temperature: readTemperature,
};
