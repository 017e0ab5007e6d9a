import { cellKey } from '../address/cellKey.js';
import { overlaps } from '../address/cellRange.js';
import type { Book } from '../book/book.js';
import { CircularReference } from '../evaluate/value.js';
import type { OutsideFunctions } from '../formula/outsideFunctions.js';
import type { FunctionLibrary } from '../library/functionLibrary.js';
import { BookCells } from './bookCells.js';
import { Dependents } from './dependents.js';
import { FormulaFunctions } from './formulaFunctions.js';
import { failedOutcome } from './formulaOutcome.js';
import { FormulaRun } from './formulaRun.js';
import type { FormulaTexts } from './formulaTexts.js';
import { Placement } from './placement.js';
import type { FormulaState } from './formulaState.js';
import { SpillGround } from './spillGround.js';
import { WaitingFormulas } from './waitingFormulas.js';

interface BookRunTerms {
  readonly book: Book;
  readonly formulas: readonly FormulaState[];
  readonly texts: FormulaTexts;
  readonly outside: OutsideFunctions;
  readonly library: FunctionLibrary | undefined;
  /** [serial day] */
  readonly now: number;
}

/** Tables that grow move what others read: after this many rounds they are taken to run in a circle. */
const mostRounds = 20;

/** Works out chosen formulas of a book, and those others that read them or are read by them. */
export class BookRun {
  private readonly cells: BookCells;
  private readonly waiting = new WaitingFormulas();
  private readonly chosen: Set<FormulaState>;
  private readonly run: FormulaRun;
  private readonly placement: Placement;
  private others: Dependents | undefined;

  constructor(
    private readonly terms: BookRunTerms,
    asked: ReadonlySet<FormulaState>,
  ) {
    const { book, formulas, texts, outside, library, now } = terms;
    this.cells = new BookCells(book);
    this.chosen = new Set(asked);
    const arrays = new Map(formulas.filter(({ kind }) => kind !== 'cell').map((one) => [placeKey(one), one]));
    this.placement = new Placement({
      cells: this.cells,
      ground: new SpillGround(book, formulas),
      isDoubtful: (formula) => !asked.has(formula) && texts.references(formula).more,
      ready: (formula) => this.run.ready(formula),
    });
    this.run = new FormulaRun({
      cells: this.cells,
      texts,
      outside,
      functions: new FormulaFunctions(outside, library),
      waiting: this.waiting,
      now,
      arrayAt: (place) => arrays.get(placeKey(place)),
      settle: (formula) => this.placement.settle(formula),
    });
  }

  workOut(): void {
    let open = [...this.chosen];
    open.push(...this.dependents(open));
    for (const formula of open) this.waiting.add(formula);
    for (let round = 0; open.length > 0; round += 1) {
      if (round === mostRounds) return this.giveUp(open);
      for (const formula of open) this.run.workOut(formula);
      open = this.outdated();
      for (const formula of open) {
        Object.assign(formula, { state: 'waiting', claimed: undefined });
        this.waiting.add(formula);
      }
    }
  }

  /** Formulas that read what changed after they had read it, and others that only now read cells that this run fills. */
  private outdated(): FormulaState[] {
    const changes = this.placement.takeChanges();
    if (changes.length === 0) return [];
    const stale = [...this.chosen].filter((formula) =>
      changes.some(
        ({ sheet, range, by }) =>
          by !== formula && formula.reads.some((area) => area.sheet === sheet && overlaps(area.range, range)),
      ),
    );
    return [...stale, ...this.dependents(changes.map(({ by }) => by))];
  }

  /** Formulas not yet chosen that read the cells of these, and those whose references cannot be known. */
  private dependents(of: readonly FormulaState[]): FormulaState[] {
    if (this.chosen.size === this.terms.formulas.length) return [];
    const { texts, formulas } = this.terms;
    this.others ??= new Dependents(
      formulas.filter((formula) => !this.chosen.has(formula)),
      (formula) => texts.references(formula),
    );
    const found = this.others.of([...of, ...this.others.doubtful].map(({ sheet, area }) => ({ sheet, range: area })));
    const fresh = [...found, ...this.others.doubtful].filter((formula) => !this.chosen.has(formula));
    for (const formula of fresh) this.chosen.add(formula);
    return [...new Set(fresh)];
  }

  private giveUp(formulas: readonly FormulaState[]): void {
    for (const formula of formulas) {
      formula.outcome = failedOutcome(formula, new CircularReference(formula), this.cells);
      this.placement.settle(formula);
    }
  }
}

function placeKey({ sheet, row, column }: { sheet: string; row: number; column: number }): string {
  return `${cellKey(row, column)} ${sheet}`;
}
