import type { HeadingRead } from '../log/headings/readHeadings.js';
import { columnsOf, type Table } from '../result/table.js';
import { dimensions } from '../units/unitTable.js';

export const headingsColumns = columnsOf({ Heading: 'text', 'Read as': 'text', Unit: 'text' });

/** Units as they are printed, by their key in the table of units. */
const printed: Readonly<Record<string, string>> = {
  l: 'L',
  ml: 'mL',
  cc: 'mL',
  'mg/l': 'mg/L',
  'ug/l': 'ug/L',
  'mg/ml': 'mg/mL',
  c: '°C',
  f: '°F',
  impgal: 'imp gal',
  floz: 'fl oz',
  sg: 'SG',
};

/** How each heading of a log was understood, as HEADINGS spills it. */
export function headingsTable(headings: readonly HeadingRead[]): Table {
  return {
    columns: headingsColumns,
    rows: headings
      .filter(({ text }) => text !== '')
      .map(({ text, words, unit }) => [
        text,
        words?.kind ?? 'unknown',
        words === null ? '' : unitText(words.dimension, unit),
      ]),
  };
}

function unitText(dimension: keyof typeof dimensions | undefined, unit: string | null): string {
  if (unit !== null) return printed[unit] ?? unit;
  return dimension === undefined ? '' : dimensions[dimension].unit;
}
