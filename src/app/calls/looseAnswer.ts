import type { Answer } from './answer.js';
import type { BundledFunction } from './bundledFunction.js';
import {
  content,
  errorCell,
  FormulaFunctions,
  type FormulaNode,
  formulaValue,
  type FunctionLibrary,
  isCellError,
  isGrid,
  parsedFormula,
  type Refusal,
  type World,
} from '../../sheet/index.js';
import { namespace } from './functionCatalogue.js';

interface LooseTerms {
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
