import type { Limits } from '../../result/problem.js';
import { isBlank, type Cell } from '../../units/cell.js';
import { highestLevel } from '../../units/readers/quantityReaders.js';
import { dimensions, type DimensionName } from '../../dimensions/dimensions.js';
import type { HeadingRead } from '../headings/readHeadings.js';
import type { NumberColumn } from './columnNumbers.js';
import type { NumberKind } from './log.js';
import { numberReader, readChange, readReplacement, type ReadCell } from './numberReaders.js';
import type { ReadRows } from './timedRows.js';

interface Kind {
  readonly dimension: DimensionName;
  readonly limits: Limits;
}

const notNegative: Limits = { min: 0 };

const kinds: Readonly<Record<NumberKind, Kind>> = {
  dose: { dimension: 'millilitres', limits: notNegative },
  change: { dimension: 'litres', limits: notNegative },
  replacement: { dimension: 'level', limits: { min: 0, max: highestLevel } },
  'top-off': { dimension: 'litres', limits: notNegative },
  salinity: { dimension: 'salinity', limits: { min: 0, max: 60 } },
  temperature: { dimension: 'celsius', limits: { min: 0, max: 45 } },
  pH: { dimension: 'plain', limits: { min: 4, max: 11 } },
  ammonia: { dimension: 'level', limits: { min: 0, max: 100 } },
  oxygen: { dimension: 'level', limits: { min: 0, max: 40 } },
  nitrite: { dimension: 'level', limits: { min: 0, max: 100 } },
  volume: { dimension: 'litres', limits: { above: 0 } },
  'hold day': { dimension: 'plain', limits: notNegative },
};

/** A column of numbers, NaN where a row says nothing; null where the log has none. */
export function numberColumn(at: ReadRows, kind: NumberKind, heading: HeadingRead | null): Float64Array | null {
  if (heading === null) return null;
  const values = new Float64Array(at.rows.count).fill(NaN);
  fill(at, heading, kind, numberReader(kind), (index, value) => (values[index] = value));
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
    if (typeof value === 'number') litres[index] = value;
    else share[index] = value.share;
  });
  return { litres, share };
}

/** Copper of the replacement water: a level, or that it was brought to the tank's own. */
export function replacementColumns(
  at: ReadRows,
  heading: HeadingRead | null,
): { level: Float64Array | null; matched: Uint8Array | null } {
  if (heading === null) return { level: null, matched: null };
  const level = new Float64Array(at.rows.count).fill(NaN);
  const matched = new Uint8Array(at.rows.count);
  fill(at, heading, 'replacement', readReplacement, (index, value) => {
    if (value === 'matched') matched[index] = 1;
    else level[index] = value;
  });
  return { level, matched };
}

function fill<T>(
  { log, gallon, rows, faults }: ReadRows,
  heading: HeadingRead,
  kind: NumberKind,
  read: ReadCell<T>,
  put: (index: number, value: number | T) => void,
): void {
  const column = { ...kinds[kind], unit: heading.unit, gallon };
  const plain = plainSpan(kind, column);
  for (let index = 0; index < rows.count; index++) {
    const row = rows.row[index] ?? 0;
    const raw = log.range[row - log.firstRow]?.[heading.column];
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
