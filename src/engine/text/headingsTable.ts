import type { HeadingRead } from '../log/headings/readHeadings.js';
import { columnsOf, type Table } from '../result/table.js';
import { dimensions, printedUnits, type DimensionName } from '../dimensions/dimensions.js';

export const headingsColumns = columnsOf({ Heading: 'text', 'Read as': 'text', Unit: 'text' });

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

function unitText(dimension: DimensionName | undefined, unit: string | null): string {
  if (unit !== null) return printedUnits.get(unit) ?? unit;
  return dimension === undefined ? '' : dimensions[dimension].unit;
}
