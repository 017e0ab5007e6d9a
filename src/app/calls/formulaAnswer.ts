import { type Answer, errorCode, looseAnswer, type OutsideFunctions, withoutEquals } from '../../sheet/index.js';
import type { BundledFunction } from './bundledFunction.js';
import { namespace } from './functionCatalogue.js';
import { outsideFunctions } from './outsideFunctions.js';

/** What a cell with a formula would show, without a sheet around it. QT functions go by their bare names too. */
export async function formulaAnswer(typed: string, bundle: readonly BundledFunction[], now: number): Promise<Answer> {
  // A blank before the bracket of a call, which people type and spreadsheet programs drop.
  const formula = withoutEquals(typed).replace(/^(\s*[A-Z_][\w.]*)\s+\(/i, '$1(');
  if (formula.trim() === '') {
    return { kind: 'error', code: errorCode.invalidName, message: 'write a formula, such as =QT.BAND("chelated")' };
  }
  return looseAnswer(formula, { outside: withBareNames(bundle), now });
}

function withBareNames(bundle: readonly BundledFunction[]): OutsideFunctions {
  const outside = outsideFunctions(bundle);
  const ids = new Set(bundle.map(({ entry }) => entry.id));
  const full = (name: string): string => (ids.has(name) ? `${namespace}.${name}` : name);
  return {
    has: (name) => outside.has(full(name)),
    call: (name, given, address) => outside.call(full(name), given, address),
    columns: (name) => outside.columns(full(name)),
  };
}
