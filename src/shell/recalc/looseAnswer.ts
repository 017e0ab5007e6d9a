import type { Answer } from '../host/answer.js';
import type { BundledFunction } from '../host/bundledFunction.js';
import { isCellError } from '../host/cellValue.js';
import { namespace } from '../host/functionCatalogue.js';
import type { FormulaNode } from '../sheetFormula/formulaNode.js';
import { parsedFormula } from '../sheetFormula/parsedFormula.js';
import { content } from './evaluate/content.js';
import { formulaValue } from './evaluate/formulaValue.js';
import { errorCell, isGrid, type World } from './evaluate/value.js';
import type { FunctionLibrary } from './library/functionLibrary.js';
import { FormulaFunctions } from './run/formulaFunctions.js';
import type { Refusal } from './run/runFormula.js';

export interface LooseTerms {
  readonly bundle: readonly BundledFunction[];
  /** undefined: the formula needs none. */
  readonly library: FunctionLibrary | undefined;
  readonly now: number;
}

/** What a formula without any cell in it gives. Our functions go by their bare names too. Throws `UnreadableFormula`. */
export function looseAnswer(node: FormulaNode, { bundle, library, now }: LooseTerms): Answer {
  const functions = new FormulaFunctions(bundle, library);
  const ours = new Set(bundle.map(({ entry }) => entry.id));
  const refusals: Refusal[] = [];
  const world: World = {
    now,
    sheetNamed: () => undefined,
    rows: () => [[errorCell('#REF!')]],
    spill: () => undefined,
    textAsFormula: (text) => parsedFormula(text),
    call: (name, given, place) =>
      functions.call(ours.has(name) && library?.has(name) !== true ? `${namespace}.${name}` : name, given, {
        place,
        world,
        note: (refusal) => refusals.push(refusal),
      }),
  };
  const place = { sheet: '', row: 0, column: 0 };
  const scope = { world, place, names: new Map(), intersects: false, evaluate: formulaValue };
  const value = content(formulaValue(node, scope), scope);
  if (isGrid(value)) return { kind: 'table', rows: value.map((row) => row.map((cell) => cell ?? 0)) };
  if (!isCellError(value)) return { kind: 'cell', value: value ?? 0 };
  const code = value.basicValue;
  return { kind: 'error', code, message: refusals.find((refusal) => refusal.code === code)?.message ?? '' };
}
