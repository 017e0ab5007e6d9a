import type { CellPlace } from '../address/cellRange.js';
import type { Book } from '../book/book.js';
import type { StoredFormula } from '../cell/formulaText.js';
import type { FormulaNode } from '../formula/formulaNode.js';
import { calledFunctions } from '../formula/functionName.js';
import { parsedFormula } from '../formula/parsedFormula.js';
import { plainReferences } from '../formula/plainReferences.js';
import { referencesIn, type FoundReferences } from '../formula/referencesIn.js';
import type { FormulaState } from './formulaState.js';

/** The formulas of a book with their names and parts of tables explained, each worked on once. */
export class FormulaTexts {
  private readonly plain = new Map<FormulaState, StoredFormula>();
  private readonly found = new Map<FormulaState, FoundReferences>();

  constructor(private readonly book: Pick<Book, 'tables' | 'names'>) {}

  plainText(formula: FormulaState): StoredFormula {
    const known = this.plain.get(formula) ?? this.explained(formula.stored, formula);
    this.plain.set(formula, known);
    return known;
  }

  references(formula: FormulaState): FoundReferences {
    const known = this.found.get(formula) ?? referencesIn(this.plainText(formula));
    this.found.set(formula, known);
    return known;
  }

  /** Whether a formula asks for the present moment or day. */
  asksForNow(formula: FormulaState): boolean {
    const text = this.plainText(formula);
    return /NOW|TODAY/i.test(text) && calledFunctions(text).some((name) => name === 'NOW' || name === 'TODAY');
  }

  /** A formula that a text spells, such as the one given to INDIRECT. */
  parsed(text: string, place: CellPlace): FormulaNode {
    return parsedFormula(this.explained(text, place));
  }

  private explained(text: string, { sheet, row, column }: CellPlace): StoredFormula {
    const { tables, names } = this.book;
    return plainReferences(text, { sheet, row, column, tables, names });
  }
}
