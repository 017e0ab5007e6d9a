import type { Cell } from '../../units/cell.js';
import { decimalText } from '../../units/decimalText.js';
import { dimensions, type Dimension } from '../../dimensions/dimensions.js';
import type { HeadingRead } from '../headings/readHeadings.js';
import { parseReading } from '../parseReading.js';
import { plainLevel } from '../plainLevel.js';
import { highestLevel } from '../../units/readers/quantityReaders.js';
import type { Level } from '../reading.js';
import { copperStates, type Log } from './log.js';
import type { ReadRows } from './timedRows.js';

type CopperColumns = Pick<Log, 'copper' | 'low' | 'odd' | 'zeroRows' | 'hasBlanks'>;

/** The copper column of a log: readings, cells set aside, and faults. */
export function copperColumn({ log, rows, faults }: ReadRows, heading: HeadingRead | null): CopperColumns {
  const copper = new Uint8Array(rows.count);
  const low = new Float64Array(rows.count).fill(NaN);
  const odd = new Map<number, Level>();
  const zeroRows: number[] = [];
  let hasBlanks = false;
  const inUnit = converter(heading?.unit ?? null);
  for (let index = 0; index < rows.count && heading !== null; index++) {
    const row = rows.row[index] ?? 0;
    const raw = log.range[row - log.firstRow]?.[heading.column];
    const plain =
      inUnit !== null ? NaN : typeof raw === 'number' ? raw : typeof raw === 'string' ? plainLevel(raw) : NaN;
    if (plain > 0 && plain <= highestLevel) {
      copper[index] = copperStates.reading;
      low[index] = plain;
      continue;
    }
    const cell = log.cellOf(raw);
    if (cell === null || cell === '') hasBlanks = true;
    const reading = parseReading(inUnit === null ? cell : bareInUnit(cell, inUnit), { row });
    if (!reading.ok) {
      copper[index] = copperStates.fault;
      faults.push({ row, kind: 'copper', problem: reading.problem, when: rows.when[index] ?? NaN });
    } else if (reading.value.kind === 'void') copper[index] = copperStates.void;
    else if (reading.value.kind === 'level') {
      copper[index] = copperStates.reading;
      low[index] = reading.value.low;
      if (reading.value.approximate || reading.value.high !== reading.value.low) odd.set(row, reading.value);
      if (cell === 0) zeroRows.push(row);
    }
  }
  return { copper, low, odd, zeroRows, hasBlanks };
}

/** What makes mg/L of the heading's unit; null where it is mg/L. */
function converter(unit: string | null): ((x: number) => number) | null {
  const { convert }: Dimension = dimensions.level;
  const toLevel = unit === null ? undefined : convert.get(unit);
  return toLevel === undefined || toLevel(1) === 1 ? null : toLevel;
}

function bareInUnit(cell: Cell, inUnit: (x: number) => number): Cell {
  if (typeof cell === 'number') return inUnit(cell);
  const number = typeof cell === 'string' ? decimalText(cell) : null;
  return number !== null && number.rest === '' && !number.unclear ? inUnit(number.value) : cell;
}
