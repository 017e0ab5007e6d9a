import { cellKey } from '../address/cellKey.js';
import { eachCell, overlaps, type CellRange } from '../address/cellRange.js';
import type { FoundReferences } from '../formula/referencesIn.js';
import type { FormulaState } from './formulaState.js';

interface SheetArea {
  readonly sheet: string;
  readonly range: CellRange;
}

interface Read {
  readonly range: CellRange;
  readonly by: FormulaState[];
}

interface SheetReads {
  /** Of one cell, by its number. */
  readonly cells: Map<number, Read>;
  readonly ranges: Map<string, Read>;
}

/** Which formulas read which cells, as far as their texts say. */
export class Dependents {
  private readonly sheets = new Map<string, SheetReads>();
  /** Those that can read cells that no reference in them shows. */
  readonly doubtful: FormulaState[] = [];

  constructor(formulas: readonly FormulaState[], referencesOf: (formula: FormulaState) => FoundReferences) {
    for (const formula of formulas) {
      const { ranges, more } = referencesOf(formula);
      if (more) this.doubtful.push(formula);
      for (const { sheet = formula.sheet, range } of ranges) this.note(formula, sheet.toLowerCase(), range);
    }
  }

  /** The formulas that read these cells, those that read what they fill, and so on. */
  of(areas: readonly SheetArea[]): Set<FormulaState> {
    const found = new Set<FormulaState>();
    const open = [...areas];
    for (let area = open.pop(); area !== undefined; area = open.pop()) {
      for (const formula of this.readers(area)) {
        if (found.has(formula)) continue;
        found.add(formula);
        open.push({ sheet: formula.sheet, range: formula.area });
      }
    }
    return found;
  }

  private readers({ sheet, range }: SheetArea): FormulaState[] {
    const reads = this.sheets.get(sheet.toLowerCase());
    if (reads === undefined) return [];
    const readers: FormulaState[] = [];
    const take = (read: Read | undefined): void => read?.by.forEach((formula) => readers.push(formula));
    for (const read of reads.ranges.values()) if (overlaps(read.range, range)) take(read);
    const size = (range.lastRow - range.firstRow + 1) * (range.lastColumn - range.firstColumn + 1);
    if (size > reads.cells.size) {
      for (const read of reads.cells.values()) if (overlaps(read.range, range)) take(read);
    } else eachCell(range, (row, column) => take(reads.cells.get(cellKey(row, column))));
    return readers;
  }

  private note(formula: FormulaState, sheet: string, range: CellRange): void {
    const reads = this.sheets.get(sheet) ?? { cells: new Map<number, Read>(), ranges: new Map<string, Read>() };
    this.sheets.set(sheet, reads);
    const { firstRow, firstColumn, lastRow, lastColumn } = range;
    if (firstRow === lastRow && firstColumn === lastColumn) {
      const read = reads.cells.get(cellKey(firstRow, firstColumn));
      if (read === undefined) reads.cells.set(cellKey(firstRow, firstColumn), { range, by: [formula] });
      else read.by.push(formula);
      return;
    }
    const key = `${firstRow},${firstColumn},${lastRow},${lastColumn}`;
    const read = reads.ranges.get(key);
    if (read === undefined) reads.ranges.set(key, { range, by: [formula] });
    else read.by.push(formula);
  }
}
