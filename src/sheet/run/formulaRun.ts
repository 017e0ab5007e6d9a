import type { CellPlace, CellRange } from '../address/cellRange.js';
import { content } from '../evaluate/content.js';
import { formulaValue } from '../evaluate/formulaValue.js';
import { intersection } from '../evaluate/intersection.js';
import { Area, isGrid, CircularReference, type Grid, type Value, type World } from '../evaluate/value.js';
import type { FormulaNode } from '../formula/formulaNode.js';
import type { OutsideFunctions } from '../formula/outsideFunctions.js';
import { parsedFormula } from '../formula/parsedFormula.js';
import type { BookCells } from './bookCells.js';
import type { FormulaFunctions } from './formulaFunctions.js';
import { failedOutcome, shapedAnswer } from './formulaOutcome.js';
import type { FormulaTexts } from './formulaTexts.js';
import { momentColumns, type MomentColumns } from './momentColumns.js';
import type { Refusal, FormulaState } from './formulaState.js';
import type { WaitingFormulas } from './waitingFormulas.js';

interface RunParts {
  readonly cells: BookCells;
  readonly texts: FormulaTexts;
  readonly outside: OutsideFunctions;
  readonly functions: FormulaFunctions;
  readonly waiting: WaitingFormulas;
  /** [serial day] */
  readonly now: number;
  /** Array formulas by the cell they stand in. */
  arrayAt(place: CellPlace): FormulaState | undefined;
  /** Puts an outcome into the cells of its formula. */
  settle(formula: FormulaState): void;
}

/** Works formulas out, those that they read before them. */
export class FormulaRun implements World {
  readonly now: number;
  private current: FormulaState | undefined;
  private clock = 0;

  constructor(private readonly parts: RunParts) {
    this.now = parts.now;
  }

  /** Works a formula out, before it what its text names: without going deeper with every formula of a long chain. */
  workOut(first: FormulaState): void {
    const open = [first];
    for (let formula = open.at(-1); formula !== undefined; formula = open.at(-1)) {
      if (formula.state === 'waiting') {
        formula.state = 'planned';
        for (const { sheet, range } of this.parts.texts.references(formula).ranges) {
          const named = this.sheetNamed(sheet ?? formula.sheet);
          if (named === undefined) continue;
          for (const other of this.parts.waiting.within(named, range)) if (other.state === 'waiting') open.push(other);
        }
      } else {
        open.pop();
        if (formula.state === 'planned') this.work(formula);
      }
    }
  }

  sheetNamed(name: string): string | undefined {
    return this.parts.cells.sheetNamed(name);
  }

  rows(area: Area): Grid {
    const { cells, waiting } = this.parts;
    for (const formula of waiting.within(area.sheet, area.range)) this.ready(formula);
    this.current?.reads.push(area);
    return cells.grid(cells.inUse(area));
  }

  spill(place: CellPlace): CellRange | undefined {
    const array = this.parts.arrayAt(place);
    if (array === undefined) return undefined;
    this.ready(array);
    return array.area;
  }

  textAsFormula(text: string, place: CellPlace): FormulaNode {
    return this.parts.texts.parsed(text, place);
  }

  call(name: string, given: readonly (Value | undefined)[], place: CellPlace): Value {
    const formula = this.current;
    const note = (one: Refusal): unknown => formula?.refusals.push(one);
    const answer = this.parts.functions.call(name, given, { place, world: this, note });
    if (isGrid(answer) && answer[0] !== undefined && this.parts.outside.has(name))
      formula?.headings.set(name, answer[0]);
    return answer;
  }

  /** Works out a formula whose cells are wanted now. */
  ready(formula: FormulaState): void {
    if (formula.state === 'running') throw new CircularReference(formula);
    if (formula.state === 'waiting' || formula.state === 'planned') this.work(formula);
  }

  private work(formula: FormulaState): void {
    const before = this.current;
    this.current = formula;
    this.clock += 1;
    Object.assign(formula, { state: 'running', reads: [], refusals: [], headings: new Map(), workedAt: this.clock });
    let circle: CircularReference | undefined;
    try {
      this.answer(formula);
    } catch (fault) {
      if (fault instanceof CircularReference) circle = fault;
      formula.outcome = failedOutcome(formula, fault, this.parts.cells);
    }
    this.current = before;
    this.parts.waiting.remove(formula);
    formula.state = 'done';
    this.parts.settle(formula);
    if (circle !== undefined && circle.of !== formula) throw circle;
  }

  private answer(formula: FormulaState): void {
    const node = parsedFormula(this.parts.texts.plainText(formula));
    const scope = { world: this, place: formula, names: new Map(), intersects: formula.kind === 'cell' };
    const value = formulaValue(node, { ...scope, evaluate: formulaValue });
    const isRange = formula.kind === 'cell' && value instanceof Area;
    const read = content(isRange ? intersection(value, formula) : value, { world: this });
    const gives =
      node.kind === 'call' && this.parts.outside.has(node.name)
        ? { calls: node.name }
        : { moments: this.moments(node, formula) };
    formula.outcome = { grid: shapedAnswer(read, formula), ...gives };
  }

  private moments(node: FormulaNode, { sheet, headings }: FormulaState): MomentColumns {
    const { cells } = this.parts;
    const showsDays = (name: string | undefined, range: CellRange): MomentColumns => {
      const read = cells.sheetNamed(name ?? sheet);
      return (column) => read !== undefined && cells.sheet(read).showsDays(range, column);
    };
    return momentColumns(node, { outside: this.parts.outside, headings, showsDays });
  }
}
