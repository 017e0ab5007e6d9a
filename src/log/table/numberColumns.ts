import type { Limits, Problem } from '../../result/problem.js';
import { ok, refuse, type Result } from '../../result/result.js';
import { salinityFromSpecificGravity } from '../../seawater/salinityFromSpecificGravity.js';
import { isBlank, type Cell } from '../../units/cell.js';
import { decimalText } from '../../units/decimalText.js';
import { celsius, specificGravity } from '../../units/quantity.js';
import { shown } from '../../units/shown.js';
import { dimensions, type DimensionName } from '../../units/unitTable.js';
import type { HeadingRead } from '../headings/readHeadings.js';
import { columnNumber, type NumberColumn } from './columnNumbers.js';
import type { NumberKind } from './log.js';
import type { ReadRows } from './readRows.js';

interface Kind {
  readonly dimension: DimensionName;
  readonly limits: Limits;
}

const notNegative: Limits = { min: 0 };

const kinds: Readonly<Record<NumberKind, Kind>> = {
  dose: { dimension: 'millilitres', limits: notNegative },
  change: { dimension: 'litres', limits: notNegative },
  replacement: { dimension: 'level', limits: { min: 0, max: 20 } },
  'top-off': { dimension: 'litres', limits: notNegative },
  salinity: { dimension: 'salinity', limits: { min: 0, max: 60 } },
  temperature: { dimension: 'celsius', limits: { min: 0, max: 45 } },
  pH: { dimension: 'plain', limits: { min: 4, max: 11 } },
  ammonia: { dimension: 'level', limits: { min: 0, max: 100 } },
  volume: { dimension: 'litres', limits: { above: 0 } },
  'hold day': { dimension: 'plain', limits: notNegative },
};

type ReadNumber = (cell: Cell, column: NumberColumn, row: number) => Result<number, Problem>;

/** A column of numbers, NaN where a row says nothing; null where the log has none. */
export function numberColumn(at: ReadRows, kind: NumberKind, heading: HeadingRead | null): Float64Array | null {
  if (heading === null) return null;
  const values = new Float64Array(at.rows.count).fill(NaN);
  fill(at, heading, kind, readers[kind] ?? columnNumberIn, (index, value) => (values[index] = value));
  return values;
}

/** Water changes: litres, or a share of the volume. */
export function changeColumns(
  at: ReadRows,
  heading: HeadingRead | null,
): { litres: Float64Array | null; share: Float64Array | null } {
  if (heading === null) return { litres: null, share: null };
  const litres = new Float64Array(at.rows.count).fill(NaN);
  const share = new Float64Array(at.rows.count).fill(NaN);
  fill(at, heading, 'change', readChange, (index, value) => {
    if (value < 0) share[index] = -value;
    else litres[index] = value;
  });
  return { litres, share };
}

function fill(
  { log, gallon, rows, faults }: ReadRows,
  heading: HeadingRead,
  kind: NumberKind,
  read: ReadNumber,
  put: (index: number, value: number) => void,
): void {
  const column = { ...kinds[kind], unit: heading.unit, gallon };
  const plain = plainSpan(kind, column);
  for (let index = 0; index < rows.count; index++) {
    const row = rows.row[index] ?? 0;
    const raw = log.range[row - 1]?.[heading.column];
    if (raw === null || raw === undefined || raw === '') continue;
    if (typeof raw === 'number' && raw > plain.above && raw <= plain.max) {
      put(index, raw);
      continue;
    }
    if (raw === 0 && column.limits.min === 0) {
      put(index, 0);
      continue;
    }
    const cell = log.cellOf(raw);
    if (isBlank(cell) || isNothing(cell)) continue;
    const value = read(cell, column, row);
    if (value.ok) put(index, value.value);
    else faults.push({ row, kind, problem: value.problem, when: rows.when[index] ?? NaN });
  }
}

const never = { above: Infinity, max: Infinity };

/** Bare numbers between these are taken as they stand; all others are looked at again. */
function plainSpan(kind: NumberKind, { dimension, limits, unit }: NumberColumn): { above: number; max: number } {
  if (unit !== null && dimensions[dimension].convert.get(unit)?.(1) !== 1) return never;
  const max = limits.max ?? Infinity;
  if (kind === 'change' && unit === null) return { above: 1, max };
  return { above: kind === 'salinity' ? 1.04 : 0, max };
}

/** What people write where there is nothing to write. */
function isNothing(cell: Cell): boolean {
  return typeof cell === 'string' && /^(?:none|no|n\/a|[-–—x]+)$/i.test(cell.trim());
}

const columnNumberIn: ReadNumber = (cell, column, row) => columnNumber(cell, column, { row });

/** A share comes back negative: "25%", or a bare number under a heading with a percent sign. */
const readChange: ReadNumber = (cell, column, row) => {
  const isPercentText = typeof cell === 'string' && cell.trim().endsWith('%');
  if (isPercentText || column.unit === '%') return shareOf(cell, row);
  const bare =
    typeof cell === 'number'
      ? cell
      : typeof cell === 'string' && decimalText(cell)?.rest === ''
        ? (decimalText(cell)?.value ?? NaN)
        : NaN;
  if (column.unit === null && bare > 0 && bare <= 1)
    return refuse({ code: 'share-of-volume', field: `row ${row}: change`, given: shown(cell) });
  return columnNumber(cell, column, { row });
};

function shareOf(cell: Cell, row: number): Result<number, Problem> {
  const text = typeof cell === 'string' ? decimalText(cell.replace('%', '')) : null;
  const isText = typeof cell === 'string' && cell.includes('%');
  const value = typeof cell === 'number' ? cell : text !== null && text.rest === '' && !text.unclear ? text.value : NaN;
  const share = !isText && value <= 1 ? value : value / 100;
  if (share >= 0 && share <= 1) return ok(share === 0 ? 0 : -share);
  return refuse({ code: 'not-a-value', at: { row }, given: shown(cell), kind: 'change' });
}

/** Specific gravity where the heading says so or the number can be nothing else, taken at 25 °C over 25 °C. */
const readSalinity: ReadNumber = (cell, column, row) => {
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

/** No tank stands at 46 °C: a bare number above it is in °F. */
const readTemperature: ReadNumber = (cell, column, row) => {
  const bare =
    typeof cell === 'number'
      ? cell
      : typeof cell === 'string' && decimalText(cell)?.rest === ''
        ? (decimalText(cell)?.value ?? NaN)
        : NaN;
  return columnNumber(cell, column.unit === null && bare > 45 ? { ...column, unit: 'f' } : column, { row });
};

/** "matched" or "premixed" says that the new water had the tank's level. */
const readReplacement: ReadNumber = (cell, column, row) =>
  typeof cell === 'string' && /\b(?:matched|premixed|same|yes)\b/i.test(cell)
    ? ok(matchedReplacement)
    : columnNumber(cell, column, { row });

/** Stands in the replacement column where the new water was brought to the tank's level. */
export const matchedReplacement = -1;

const readers: Partial<Record<NumberKind, ReadNumber>> = {
  salinity: readSalinity,
  temperature: readTemperature,
  replacement: readReplacement,
};
