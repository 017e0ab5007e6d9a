import { addressOf, type CellRange, rangeIn } from '../../sheet/index.js';
import { rangeParts } from '../logs/rangeText.js';
import type { Places } from './shownFile.js';

/** Rows or columns that were put into a sheet or taken out of it. */
interface LinesMoved {
  readonly sheet: string;
  readonly lines: 'rows' | 'columns';
  /** Counted from 0. */
  readonly first: number;
  readonly count: number;
  readonly how: 'put in' | 'taken out';
}

/** The named tables and ranges of a file after rows or columns were put in above, beside or within them, or taken out. */
export function movedPlaces({ tables, names }: Places, moved: LinesMoved): Places {
  return {
    tables: tables.map((table) => {
      return table.sheet === moved.sheet ? { ...table, range: movedRange(table.range, moved) } : table;
    }),
    names: names.map((name) => {
      const sheet = rangeParts(name.formula)?.sheet ?? name.sheet;
      return sheet === moved.sheet ? { ...name, formula: movedFormula(name.formula, moved) } : name;
    }),
  };
}

function movedRange(range: CellRange, moved: LinesMoved): CellRange {
  const { firstRow, firstColumn, lastRow, lastColumn } = range;
  if (moved.lines === 'rows') {
    const [first, last] = movedSpan(firstRow, lastRow, moved);
    return { ...range, firstRow: first, lastRow: last };
  }
  const [first, last] = movedSpan(firstColumn, lastColumn, moved);
  return { ...range, firstColumn: first, lastColumn: last };
}

function movedSpan(first: number, last: number, { first: at, count, how }: LinesMoved): [number, number] {
  const place = (line: number): number => {
    if (line < at) return line;
    return how === 'put in' ? line + count : Math.max(at, line - count);
  };
  // The last line goes with its own cells: lines put in right behind it are not within.
  const end = how === 'taken out' && last >= at && last < at + count ? at - 1 : place(last);
  return [place(first), Math.max(place(first), end)];
}

const fixedRange = /(?:^|!)\$[a-z]+\$\d+(?::\$[a-z]+\$\d+)?$/i;

/** A name that stands for one fixed range; whatever else a name may be, such as a formula or whole columns, stays as it is. */
function movedFormula(formula: string, moved: LinesMoved): string {
  const range = fixedRange.test(formula) ? rangeIn(rangeParts(formula)?.cells) : undefined;
  if (range === undefined) return formula;
  const { firstRow, firstColumn, lastRow, lastColumn } = movedRange(range, moved);
  const cells = [addressOf(firstRow, firstColumn), addressOf(lastRow, lastColumn)];
  const corners = cells.map((cell) => cell.replace(/^([A-Z]+)(\d+)$/, '$$$1$$$2'));
  return `${formula.slice(0, formula.lastIndexOf('!') + 1)}${[...new Set(corners)].join(':')}`;
}
