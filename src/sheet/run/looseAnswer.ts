import { errorCell, isCellError } from '../cell/cellValue.js';
import { errorCode } from '../cell/errorCode.js';
import { withoutEquals, type EnteredFormula, type TypedFormula } from '../cell/formulaText.js';
import { content } from '../evaluate/content.js';
import { formulaValue } from '../evaluate/formulaValue.js';
import { isGrid, type Scope, type World } from '../evaluate/value.js';
import { UnreadableFormula, type FormulaNode } from '../formula/formulaNode.js';
import { formulaTokens } from '../formula/formulaTokens.js';
import { calledFunctions } from '../formula/functionName.js';
import type { Answer, OutsideFunctions } from '../formula/outsideFunctions.js';
import { parsedFormula } from '../formula/parsedFormula.js';
import { loadedLibrary } from '../library/loadedLibrary.js';
import { FormulaFunctions, needsLibrary, outsideAnswer } from './formulaFunctions.js';
import type { Refusal } from './formulaState.js';

interface LooseTerms {
  readonly outside: OutsideFunctions;
  /** What NOW() gives. [serial day from 1900] */
  readonly now: number;
}

/** What a cell with a formula would show, without a sheet around it. */
export async function looseAnswer(typed: EnteredFormula | TypedFormula, terms: LooseTerms): Promise<Answer> {
  const formula = withoutEquals(typed);
  const cell = formulaTokens(formula).find(({ kind }) => ['reference', 'table', 'outside'].includes(kind));
  if (cell !== undefined) {
    return refused(errorCode.invalidReference, `there is no sheet to look for ${cell.text} in; write the value itself`);
  }
  const { outside } = terms;
  const unknown = calledFunctions(formula).find((name) => outside.has(name) && outside.columns(name) === undefined);
  if (unknown !== undefined) return refused(errorCode.invalidName, `there is no function ${unknown}`);
  try {
    return await answerOf(parsedFormula(formula), terms, needsLibrary(formula, outside));
  } catch (fault) {
    if (!(fault instanceof UnreadableFormula)) throw fault;
    return refused(errorCode.invalidName, `the formula ${fault.message}`);
  }
}

async function answerOf(node: FormulaNode, { outside, now }: LooseTerms, isUsual: boolean): Promise<Answer> {
  const functions = new FormulaFunctions(outside, isUsual ? await loadedLibrary() : undefined);
  const refusals: Refusal[] = [];
  const world: World = {
    now,
    sheetNamed: () => undefined,
    rows: () => [[errorCell(errorCode.invalidReference)]],
    spill: () => undefined,
    textAsFormula: (text) => parsedFormula(text),
    call: (name, given, at) => functions.call(name, given, { place: at, world, note: (one) => refusals.push(one) }),
  };
  const place = { sheet: '', row: 0, column: 0 };
  const scope: Scope = { world, place, names: new Map(), intersects: false, evaluate: formulaValue };
  if (node.kind === 'call' && outside.has(node.name)) {
    const given = node.given.map((one) => one && formulaValue(one, scope));
    return outsideAnswer(node.name, given, { outside, place, world });
  }
  const value = content(formulaValue(node, scope), scope);
  if (isGrid(value)) return { kind: 'table', rows: value.map((row) => row.map((one) => one ?? 0)) };
  if (!isCellError(value)) return { kind: 'cell', value: value ?? 0 };
  const code = value.basicValue;
  return { kind: 'error', code, message: refusals.find((refusal) => refusal.code === code)?.message ?? '' };
}

function refused(code: string, message: string): Answer {
  return { kind: 'error', code, message };
}
