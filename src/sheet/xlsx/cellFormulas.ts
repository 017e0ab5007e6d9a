import { type CellRange, oneCell, rangeIn } from '../address/cellRange.js';
import { bookLimits } from '../book/bookLimits.js';
import { movableFormula, type MovableFormula } from '../formula/movableFormula.js';
import type { XmlAttributes } from '../xml/walkXml.js';
import { FileProblem } from '../zip/fileProblem.js';

interface Place {
  readonly row: number;
  readonly column: number;
}

interface FirstCell extends Place {
  readonly formula: string;
  /** Made when another cell first needs the formula. */
  moved?: MovableFormula;
}

interface FormulaAt extends Place {
  /** The attributes of `<f>`, and the text in it. */
  readonly attributes: XmlAttributes;
  readonly text: string;
  readonly isDynamic: boolean;
}

interface CellFormula {
  readonly formula: string;
  readonly fills?: CellRange;
  readonly dynamic?: boolean;
}

/** The formulas of one sheet, including those that the file holds once for several cells. */
export class CellFormulas {
  readonly #firsts = new Map<string, FirstCell>();
  #length = 0;

  /** The formula of a cell; undefined where the element turns out to be empty. */
  at(cell: FormulaAt): CellFormula | undefined {
    const { t: kind, ref, si: number = '' } = cell.attributes as Partial<XmlAttributes>;
    const text = cell.text.replace(/^\s*=/, '');
    const formula = kind === 'shared' ? this.#shared(number, text, cell) : text;
    if (formula === '') return undefined;
    if (kind !== 'array') return { formula };
    const fills = rangeIn(ref) ?? oneCell(cell);
    return cell.isDynamic ? { formula, fills, dynamic: true } : { formula, fills };
  }

  /** The first cell of a shared formula brings the text, the others have none. */
  #shared(number: string, text: string, { row, column }: Place): string {
    if (text !== '') {
      this.#firsts.set(number, { formula: text, row, column });
      return text;
    }
    const first = this.#firsts.get(number);
    if (first === undefined) return '';
    this.#length += first.formula.length;
    if (this.#length > bookLimits.sharedFormulas) {
      throw new FileProblem('The file repeats a long formula over more cells than a log can have; it is not opened.');
    }
    first.moved ??= movableFormula(first.formula);
    return first.moved(row - first.row, column - first.column);
  }
}
