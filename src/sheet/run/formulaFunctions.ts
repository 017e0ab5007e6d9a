import { addressOf } from '../address/addressOf.js';
import type { CellPlace } from '../address/cellRange.js';
import { errorCell, type Given } from '../cell/cellValue.js';
import type { StoredFormula, TypedFormula } from '../cell/formulaText.js';
import { content } from '../evaluate/content.js';
import { formulaForms } from '../evaluate/formulaValue.js';
import type { Value, World } from '../evaluate/value.js';
import { UnreadableFormula } from '../formula/formulaNode.js';
import { calledFunctions } from '../formula/functionName.js';
import type { Answer, OutsideFunctions } from '../formula/outsideFunctions.js';
import type { FunctionLibrary } from '../library/functionLibrary.js';
import type { Refusal } from './formulaState.js';

interface CallPlace {
  readonly place: CellPlace;
  readonly world: World;
  /** Takes down what a function from outside says when it refuses. */
  note(refusal: Refusal): void;
}

/** All functions that a formula can call: those from outside, and the usual ones from the library. */
export class FormulaFunctions {
  constructor(
    private readonly outside: OutsideFunctions,
    private readonly library: FunctionLibrary | undefined,
  ) {}

  call(name: string, given: readonly (Value | undefined)[], at: CallPlace): Value {
    if (this.outside.has(name)) return valueOf(outsideAnswer(name, given, { ...at, outside: this.outside }), at);
    if (this.library?.has(name) !== true) throw new UnreadableFormula(`calls ${name}, which is not supported here`);
    return this.library.call(name, given, at);
  }
}

type OutsidePlace = Pick<CallPlace, 'place' | 'world'> & { readonly outside: OutsideFunctions };

/** What a function from outside gives. */
export function outsideAnswer(
  name: string,
  given: readonly (Value | undefined)[],
  { outside, place, world }: OutsidePlace,
): Answer {
  if (outside.columns(name) === undefined) throw new UnreadableFormula(`calls ${name}, and no function has this name`);
  const read = given.map((one): Given => (one === undefined ? undefined : content(one, { world })));
  return outside.call(name, read, `${place.sheet}!${addressOf(place.row, place.column)}`);
}

function valueOf(answer: Answer, at: CallPlace): Value {
  if (answer.kind === 'cell') return answer.value;
  if (answer.kind === 'table') return answer.rows;
  if (answer.message !== '') at.note({ code: answer.code, message: answer.message });
  return errorCell(answer.code);
}

/** Whether a formula calls a function that is neither from outside nor worked out here: the library is needed for it. */
export function needsLibrary(formula: StoredFormula | TypedFormula, outside: OutsideFunctions): boolean {
  return calledFunctions(formula).some((name) => !outside.has(name) && !formulaForms.has(name));
}
