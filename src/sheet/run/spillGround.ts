import { addressOf, addressRange } from '../address/addressOf.js';
import { cellKey } from '../address/cellKey.js';
import { eachCell, overlaps, type CellRange } from '../address/cellRange.js';
import { sheetLimits } from '../address/sheetLimits.js';
import type { Book, BookSheet, BookTable } from '../book/book.js';
import type { FormulaState } from './formulaState.js';

/** Where array formulas of a book may spread: over cells that hold nothing, and over those that they fill already. */
export class SpillGround {
  private readonly sheets: ReadonlyMap<string, BookSheet>;
  private readonly tables: readonly BookTable[];
  /** Cells that array formulas filled as stored: their values do not count as content. */
  private readonly filledBefore = new Map<string, Set<number>>();
  private readonly owners = new Map<string, Map<number, FormulaState>>();

  constructor(book: Book, formulas: readonly FormulaState[]) {
    this.sheets = new Map(book.sheets.map((sheet) => [sheet.name, sheet]));
    this.tables = book.tables;
    for (const formula of formulas) {
      if (formula.kind === 'cell') continue;
      const before = this.filledBefore.get(formula.sheet) ?? new Set<number>();
      this.filledBefore.set(formula.sheet, before);
      eachCell(formula.area, (row, column) => before.add(cellKey(row, column)));
      this.take(formula, formula.area);
    }
  }

  take(formula: FormulaState, area: CellRange): void {
    const owners = this.ownersIn(formula.sheet);
    eachCell(area, (row, column) => owners.set(cellKey(row, column), formula));
  }

  release(formula: FormulaState): void {
    const owners = this.ownersIn(formula.sheet);
    eachCell(formula.area, (row, column) => {
      if (owners.get(cellKey(row, column)) === formula) owners.delete(cellKey(row, column));
    });
  }

  /** Array formulas that fill a cell of an area now. */
  rivals(formula: FormulaState, area: CellRange): FormulaState[] {
    const owners = this.ownersIn(formula.sheet);
    const found = new Set<FormulaState>();
    eachCell(area, (row, column) => {
      const owner = owners.get(cellKey(row, column));
      if (owner !== undefined && owner !== formula) found.add(owner);
    });
    return [...found];
  }

  /** Why a formula cannot fill an area; undefined where it can. */
  hindrance(formula: FormulaState, area: CellRange): string | undefined {
    if (area.firstRow === area.lastRow && area.firstColumn === area.lastColumn) return undefined;
    const fills = `the answer fills ${addressRange(area)}`;
    if (area.lastRow >= sheetLimits.rows || area.lastColumn >= sheetLimits.columns) {
      return 'the answer reaches past the end of the sheet; move the formula';
    }
    const { sheet } = formula;
    const table = this.tables.find((one) => one.sheet === sheet && overlaps(one.range, area));
    if (table !== undefined) return `${fills}, and the table ${table.name} is there; move the formula`;
    const merged = this.sheets.get(sheet)?.merged.find((range) => overlaps(range, area));
    if (merged !== undefined) return `${fills}, and ${addressRange(merged)} is merged; unmerge it or move the formula`;
    const cell = this.contentIn(formula, area);
    return cell === undefined ? undefined : `${fills}, and ${cell} is not empty; clear it or move the formula`;
  }

  private contentIn(formula: FormulaState, area: CellRange): string | undefined {
    const owners = this.ownersIn(formula.sheet);
    const before = this.filledBefore.get(formula.sheet);
    const rows = this.sheets.get(formula.sheet)?.rows ?? [];
    let found: string | undefined;
    eachCell(area, (row, column) => {
      if (found !== undefined || (row === formula.row && column === formula.column)) return;
      const owner = owners.get(cellKey(row, column));
      const cell = rows[row]?.[column];
      const isTyped = cell?.formula !== undefined || (cell?.value ?? null) !== null;
      const isContent = isTyped && before?.has(cellKey(row, column)) !== true;
      if (isContent || (owner !== undefined && owner !== formula)) found = addressOf(row, column);
    });
    return found;
  }

  private ownersIn(sheet: string): Map<number, FormulaState> {
    const owners = this.owners.get(sheet) ?? new Map<number, FormulaState>();
    this.owners.set(sheet, owners);
    return owners;
  }
}
