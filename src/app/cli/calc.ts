import { answerKind } from '../../engine/index.js';
import type { Answer } from '../../sheet/index.js';
import type { BundledFunction } from '../calls/bundledFunction.js';
import { formulaAnswer } from '../calls/formulaAnswer.js';
import { printable } from './printable.js';
import { exitCode, type ExitCode, type Terminal } from './terminal.js';
import { cellText, textTable } from './textTable.js';

interface CalcTerms {
  readonly functions: readonly BundledFunction[];
  /** [serial day] */
  readonly now: number;
  readonly json: boolean;
}

/** `lazaret calc FORMULA`: what a cell with this formula would show. */
export async function calc(formula: string, terms: CalcTerms, terminal: Terminal): Promise<ExitCode> {
  const answer = await formulaAnswer(formula, terms.functions, terms.now);
  if (answer.kind === 'error') {
    terminal.err(`${answer.code}${answer.message === '' ? '' : ` ${printable(answer.message)}`}`);
    return exitCode.refused;
  }
  terminal.out(terms.json ? JSON.stringify(valueOf(answer)) : shownAnswer(answer, outerFunction(formula), terminal));
  return exitCode.done;
}

function valueOf(answer: Exclude<Answer, { kind: 'error' }>): unknown {
  return answer.kind === 'cell' ? answer.value : answer.rows;
}

function shownAnswer(answer: Exclude<Answer, { kind: 'error' }>, id: string, { columns }: Terminal): string {
  const aligned = columns !== undefined;
  if (answer.kind === 'table') return textTable(answer.rows, { id, aligned });
  return cellText(answer.value, aligned && answerKind(id) === 'time');
}

/** The function whose answer is shown, or nothing where the formula does more than call one. */
function outerFunction(formula: string): string {
  return /^\s*=?\s*(?:QT\.)?([A-Z]+)\s*\([^()]*\)\s*$/i.exec(formula)?.[1]?.toUpperCase() ?? '';
}
