import { UnreadableFormula } from '../formula/unreadableFormula.js';
import { errorCell } from '../evaluate/value.js';
import type { BookCells } from './bookCells.js';
import { CircularReference } from './circularReference.js';
import type { Outcome, RunFormula } from './runFormula.js';
import { shapedAnswer } from './shapedAnswer.js';

/** What becomes of a formula that could not be worked out. A fault of our own is thrown on. */
export function failedOutcome(formula: RunFormula, fault: unknown, cells: BookCells): Outcome {
  if (fault instanceof CircularReference) {
    const reason = 'the formula reads its own cell, or cells that read it; break the circle';
    return { grid: shapedAnswer(errorCell('#REF!'), formula), reason };
  }
  const grid = cells.sheet(formula.sheet).grid(formula.filled);
  if (fault instanceof UnreadableFormula) return { grid, isKept: true, reason: `the formula ${fault.message}` };
  if (fault instanceof RangeError) {
    return { grid, isKept: true, reason: 'the formula stands at the end of a chain too long to be followed' };
  }
  throw fault;
}
