import { addressOf, type CellRange, rangeIn } from '../../sheet/index.js';
import { rangeParts } from '../logs/rangeText.js';
import type { Places } from './shownFile.js';

/** Rows or columns that were inserted into a sheet or deleted from it. */
interface LinesMoved {
  readonly sheet: string;
  readonly lines: 'rows' | 'columns';
  /** Counted from 0. */
  readonly first: number;
  readonly count: number;
  readonly how: 'inserted' | 'deleted';
}

/** The named tables and ranges of a file after rows or columns were inserted above, beside or within them, or deleted. */
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
    return how === 'inserted' ? line + count : Math.max(at, line - count);
  };
  // The last line moves with its own cells: lines inserted right after it are outside.
  const end = how === 'deleted' && last >= at && last < at + count ? at - 1 : place(last);
  return [place(first), Math.max(place(first), end)];
}

const fixedRange = /(?:^|!)\$[a-z]+\$\d+(?::\$[a-z]+\$\d+)?$/i;

/** Only a name for one fixed range moves; anything else a name may be, such as a formula or whole columns, stays as it is. */
function movedFormula(formula: string, moved: LinesMoved): string {
  const range = fixedRange.test(formula) ? rangeIn(rangeParts(formula)?.cells) : undefined;
  if (range === undefined) return formula;
  const { firstRow, firstColumn, lastRow, lastColumn } = movedRange(range, moved);
  const cells = [addressOf(firstRow, firstColumn), addressOf(lastRow, lastColumn)];
  const corners = cells.map((cell) => cell.replace(/^([A-Z]+)(\d+)$/, '$$$1$$$2'));
  return `${formula.slice(0, formula.lastIndexOf('!') + 1)}${[...new Set(corners)].join(':')}`;
}
