import { answerColumns } from '../../../engine/index.js';
import { type TableColumn } from './column.js';
import { table, type TablePart, type TableTerms } from './table.js';
import type { Look } from './looks.js';

interface ColumnLook {
  readonly width?: number;
  readonly format?: string;
  readonly look?: Look;
}

interface AnswerTerms extends Pick<
  TableTerms,
  'at' | 'room' | 'body' | 'height' | 'headingHeight' | 'tones' | 'ruled'
> {
  /** Of the function. */
  readonly id: string;
  readonly given: string;
  /** What its places begin with; if left out, its id. */
  readonly key?: string;
  /** The width of a column, or more that is its own, by heading; the others look as what they hold does. */
  readonly columns?: Readonly<Record<string, number | ColumnLook>>;
}

/**
 * A table that one call of a function fills. Its columns are those of the function, so that a new one needs no edit here:
 * it takes its side, its format and its width from what it holds.
 */
export function answerTable({ id, given, key = id, columns = {}, ...terms }: AnswerTerms): TablePart {
  const known = answerTableColumns(id);
  const stray = Object.keys(columns).find((heading) => !known.some((column) => column.heading === heading));
  if (stray !== undefined) throw new Error(`${id} has no column ${stray}`);
  return table({
    ...terms,
    key,
    formula: `=QT.${id}(${given})`,
    columns: known.map((column) => {
      const own = columns[column.heading];
      return { ...column, ...(typeof own === 'number' ? { width: own } : own) };
    }),
  });
}

/** The columns of a function that gives a table, as they are shown. */
export function answerTableColumns(id: string): TableColumn[] {
  const known = answerColumns[id];
  if (known === undefined || typeof known === 'string') throw new Error(`${id} gives no table`);
  return known.map(({ heading, kind }) => {
    const format = answerFormats[id]?.[heading];
    return { heading, kind, ...(format === undefined ? {} : { format }) };
  });
}

const everyLevel = { Expected: '0.00', Low: '0.00', High: '0.00', Reading: '0.00', 'Off by': '0.00' };

/** To how many places the numbers of an answer are shown; what is not named here is shown as it is. */
const answerFormats: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  HOLDROWS: { Copper: '0.00', 'Hold day': '0', 'Days done': '0.00', Row: '0' },
  HOLDS: { Days: '0.00', Row: '0' },
  LEVELS: everyLevel,
  AUDIT: { Row: '0' },
  FISHDAYS: { 'Hold days': '0.0' },
  DEATHS: {
    ...{ 'Came in': '0', 'Dead on arrival': '0', Raising: '0', Hold: '0', Observation: '0', Left: '0' },
    '% after arrival': '0.0',
  },
  DONOW: { Amount: '0.0' },
  SYSTEMS: { Copper: '0.00', 'Hold day': '0', 'Days left': '0.0', 'Hours since test': '0' },
  DOSESPLIT: { 'Dose mL': '0.0', 'Running mL': '0.0' },
  RAMP: { 'Dose mL': '0.0', 'Level after': '0.00' },
  THIN: { 'Stock mL': '0.0', 'Water mL': '0.0' },
  AMMONIACHANGE: { 'Change L': '0.0', 'Copper mL for the new water': '0.0' },
  LOSSRATE: { '% a day': '0.00', Low: '0.00', High: '0.00', 'R²': '0.000' },
  METERFITS: { 'Keep at least': '0.000' },
  PLAN: { Day: '0' },
  SELFCHECK: { Published: '#,##0.0####', Computed: '#,##0.0####' },
};
