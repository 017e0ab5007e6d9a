import { addressOf } from '../address/addressOf.js';
import type { BundledFunction } from '../../app/calls/bundledFunction.js';
import { callFunction } from '../../app/calls/callFunction.js';
import type { Given } from '../cell/cellValue.js';
import { cellName, namespace } from '../../app/calls/functionCatalogue.js';
import { UnreadableFormula } from '../formula/unreadableFormula.js';
import { content } from '../evaluate/content.js';
import { errorCell, type Place, type Value, type World } from '../evaluate/value.js';
import type { FunctionLibrary } from '../library/functionLibrary.js';
import type { Refusal } from './runFormula.js';

interface CallPlace {
  readonly place: Place;
  readonly world: World;
  /** Takes down what a function of ours says when it refuses. */
  note(refusal: Refusal): void;
}

/** All functions that a formula can call: ours from the bundle, the usual ones from the library. */
export class FormulaFunctions {
  private readonly ours: ReadonlyMap<string, BundledFunction>;

  constructor(
    bundle: readonly BundledFunction[],
    private readonly library: FunctionLibrary | undefined,
  ) {
    this.ours = new Map(bundle.map((bundled) => [cellName(bundled.entry), bundled]));
  }

  call(name: string, given: readonly (Value | undefined)[], at: CallPlace): Value {
    const bundled = this.ours.get(name);
    if (bundled !== undefined) return ourAnswer(bundled, given, at);
    if (name.startsWith(`${namespace}.`)) throw new UnreadableFormula(`calls ${name}, and no function has this name`);
    if (this.library?.has(name) !== true) throw new UnreadableFormula(`calls ${name}, which is not worked out here`);
    return this.library.call(name, given, at);
  }
}

function ourAnswer(bundled: BundledFunction, given: readonly (Value | undefined)[], at: CallPlace): Value {
  const { entry, implementation, allowErrors } = bundled;
  const { sheet, row, column } = at.place;
  const answer = callFunction({
    entry,
    implementation,
    allowErrors,
    given: given.map((one): Given => (one === undefined ? undefined : content(one, at))),
    address: `${sheet}!${addressOf(row, column)}`,
  });
  if (answer.kind === 'cell') return answer.value;
  if (answer.kind === 'table') return answer.rows;
  if (answer.message !== '') at.note({ code: answer.code, message: answer.message });
  return errorCell(answer.code);
}
