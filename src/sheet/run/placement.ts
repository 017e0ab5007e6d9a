import { eachCell, isInside, type CellRange } from '../address/cellRange.js';
import { isCellError, errorCell, type CellValue } from '../cell/cellValue.js';
import { sameCell } from '../cell/sameCell.js';
import { Area, CircularReference } from '../evaluate/value.js';
import type { BookCells } from './bookCells.js';
import { errorReason } from './formulaOutcome.js';
import type { Outcome, FormulaState } from './formulaState.js';
import type { SpillGround } from './spillGround.js';

interface PlacementParts {
  readonly cells: BookCells;
  readonly ground: SpillGround;
  /** Whether a formula is only worked out because what it reads cannot be known. */
  isDoubtful(formula: FormulaState): boolean;
  /** Works a formula out if it is not yet. */
  ready(formula: FormulaState): void;
}

/** Cells that changed after others may have read them. */
interface LateChange {
  readonly sheet: string;
  readonly range: CellRange;
  readonly by: FormulaState;
}

/** Puts answers into the cells of their formulas. */
export class Placement {
  private changes: LateChange[] = [];

  constructor(private readonly parts: PlacementParts) {}

  takeChanges(): LateChange[] {
    const { changes } = this;
    this.changes = [];
    return changes;
  }

  settle(formula: FormulaState): void {
    const { outcome } = formula;
    if (outcome === undefined || outcome.isKept === true) return;
    if (this.isWorse(formula, outcome)) {
      formula.outcome = { ...outcome, grid: this.parts.cells.sheet(formula.sheet).grid(formula.filled), isKept: true };
      return;
    }
    const area = areaOf(formula, outcome.grid);
    const hindrance = formula.kind === 'dynamic' ? this.hindrance(formula, area) : undefined;
    if (hindrance === undefined) {
      const reason = outcome.reason ?? errorReason(formula, this.parts.cells);
      this.put(formula, { ...outcome, ...(reason === undefined ? {} : { reason }) }, area);
    } else {
      // When something moves out of the way, the formula is worked out again.
      formula.reads.push(new Area(formula.sheet, area));
      const grid = [[errorCell('#SPILL!')]];
      this.put(formula, { grid, reason: hindrance }, areaOf(formula, grid));
    }
  }

  /** A formula whose references cannot be known ends in an error here, and did not when it was stored. */
  private isWorse(formula: FormulaState, { grid }: Outcome): boolean {
    if (!isCellError(grid[0]?.[0]) || !this.parts.isDoubtful(formula)) return false;
    return !isCellError(this.parts.cells.sheet(formula.sheet).value(formula.row, formula.column));
  }

  private hindrance(formula: FormulaState, area: CellRange): string | undefined {
    const { ground } = this.parts;
    for (const rival of ground.rivals(formula, area)) {
      try {
        if (rival.state !== 'running') this.parts.ready(rival);
      } catch (fault) {
        if (!(fault instanceof CircularReference)) throw fault;
      }
    }
    return ground.hindrance(formula, area);
  }

  private put(formula: FormulaState, outcome: Outcome, area: CellRange): void {
    const { cells, ground } = this.parts;
    const sheet = cells.sheet(formula.sheet);
    const before = formula.area;
    const changed: [row: number, column: number][] = [];
    const set = (row: number, column: number, value: CellValue): void => {
      if (sameCell(sheet.value(row, column), value)) return;
      sheet.set(row, column, value);
      if (formula.claimed === undefined || !isInside(formula.claimed, row, column)) changed.push([row, column]);
    };
    eachCell(before, (row, column) => {
      if (!isInside(area, row, column)) set(row, column, null);
    });
    eachCell(area, (row, column) =>
      set(row, column, outcome.grid[row - area.firstRow]?.[column - area.firstColumn] ?? null),
    );
    if (formula.kind !== 'cell') {
      ground.release(formula);
      ground.take(formula, area);
    }
    formula.outcome = outcome;
    formula.area = area;
    if (changed.length > 0) this.changes.push({ sheet: formula.sheet, range: around(changed), by: formula });
  }
}

function areaOf({ row, column }: FormulaState, grid: Outcome['grid']): CellRange {
  const [height, width] = [grid.length, grid[0]?.length ?? 1];
  return { firstRow: row, firstColumn: column, lastRow: row + height - 1, lastColumn: column + width - 1 };
}

function around(cells: readonly (readonly [row: number, column: number])[]): CellRange {
  const range = { firstRow: Infinity, firstColumn: Infinity, lastRow: -1, lastColumn: -1 };
  for (const [row, column] of cells) {
    range.firstRow = Math.min(range.firstRow, row);
    range.lastRow = Math.max(range.lastRow, row);
    range.firstColumn = Math.min(range.firstColumn, column);
    range.lastColumn = Math.max(range.lastColumn, column);
  }
  return range;
}
