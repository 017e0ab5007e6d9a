import { overlaps, type CellRange } from '../address/cellRange.js';
import type { FormulaState } from './formulaState.js';

interface SheetFormulas {
  readonly waiting: Set<FormulaState>;
  readonly byRow: Map<number, Set<FormulaState>>;
}

/** The formulas that are not worked out yet, found by the cells they fill. */
export class WaitingFormulas {
  private readonly sheets = new Map<string, SheetFormulas>();

  add(formula: FormulaState): void {
    const sheet = this.sheets.get(formula.sheet) ?? { waiting: new Set(), byRow: new Map() };
    this.sheets.set(formula.sheet, sheet);
    sheet.waiting.add(formula);
    for (let row = formula.area.firstRow; row <= formula.area.lastRow; row += 1) {
      const there = sheet.byRow.get(row);
      if (there === undefined) sheet.byRow.set(row, new Set([formula]));
      else there.add(formula);
    }
  }

  /** Call this before the cells of the formula change. */
  remove(formula: FormulaState): void {
    const sheet = this.sheets.get(formula.sheet);
    sheet?.waiting.delete(formula);
    for (let row = formula.area.firstRow; row <= formula.area.lastRow; row += 1) sheet?.byRow.get(row)?.delete(formula);
  }

  /** Those that fill a cell of a range. */
  within(name: string, range: CellRange): FormulaState[] {
    const sheet = this.sheets.get(name);
    if (sheet === undefined || sheet.waiting.size === 0) return [];
    if (sheet.waiting.size <= range.lastRow - range.firstRow) {
      return [...sheet.waiting].filter(({ area }) => overlaps(area, range));
    }
    const found = new Set<FormulaState>();
    for (let row = range.firstRow; row <= range.lastRow; row += 1) {
      for (const formula of sheet.byRow.get(row) ?? []) if (overlaps(formula.area, range)) found.add(formula);
    }
    return [...found];
  }
}
