import { FileProblem } from '../zip/fileProblem.js';
import { bookLimits } from '../book/bookLimits.js';
import { movableFormula, type MovableFormula } from '../formula/movableFormula.js';

interface FirstCell {
  readonly formula: string;
  readonly row: number;
  readonly column: number;
  /** Made when another cell asks for the formula. */
  moved?: MovableFormula;
}

interface SharingCell {
  readonly index: string;
  readonly text: string;
  readonly row: number;
  readonly column: number;
}

/** The formulas of one sheet that stand in the file once and hold for several cells. */
export class SharedFormulas {
  readonly #firsts = new Map<string, FirstCell>();
  #length = 0;

  /** The formula of a cell that shares a numbered formula; the first cell brings the text, the others have none. */
  at(cell: SharingCell): string {
    const { index, text, row, column } = cell;
    if (text !== '') {
      this.#firsts.set(index, { formula: text, row, column });
      return text;
    }
    const first = this.#firsts.get(index);
    if (first === undefined) return '';
    this.#length += first.formula.length;
    if (this.#length > bookLimits.sharedFormulas) {
      throw new FileProblem('The file repeats a long formula over more cells than a log can have; it is not opened.');
    }
    first.moved ??= movableFormula(first.formula);
    return first.moved(row - first.row, column - first.column);
  }
}
