import { ok, type Result } from '../../../engine/index.js';
import type { Given } from '../../../sheet/index.js';
import type { Formula, FormulaFault } from './formula.js';
import { FormulaText } from './formulaText.js';
import { literalIn } from './literalIn.js';

/**
 * A call as typed in a cell, its arguments written out: numbers, `25%`, `"text"` with doubled quotes, TRUE and FALSE, error
 * values, array constants `{a,b;c,d}`, and nothing between two commas for an argument left out.
 *
 * @param written such as `=QT.HOLDDAYS({46082;46083},{2.1;2.2},"chelated")`; the = and the namespace may be missing
 * @returns name and arguments, or where it cannot be read
 */
export function parseFormula(written: string): Result<Formula, FormulaFault> {
  const text = new FormulaText(written);
  text.take(/=/);
  const name = text.take(/(?:QT\.)?[A-Z]+(?=\s*\()/i);
  if (name === undefined) return text.fault('write a function and its arguments, such as =QT.BAND("chelated")');
  text.take(/\(/);
  const given: Given[] = [];
  if (text.take(/\)/) === undefined) {
    const fault = argumentsIn(text, given);
    if (fault !== null) return fault;
  }
  if (!text.has(/$/)) return text.fault('the formula ends before this; write one call alone');
  return ok({ name: name.replace(/^QT\./i, '').toUpperCase(), given });
}

/** Fills the list up to the closing bracket; the refusal of what is not an argument, or null. */
function argumentsIn(text: FormulaText, given: Given[]): ReturnType<FormulaText['fault']> | null {
  for (;;) {
    if (text.has(/[,)]/)) given.push(undefined);
    else {
      const argument = literalIn(text);
      if (!argument.ok) return argument;
      given.push(argument.value);
    }
    const separator = text.take(/[,)]/);
    if (separator === undefined) return text.fault('write a comma or the closing bracket');
    if (separator === ')') return null;
  }
}
