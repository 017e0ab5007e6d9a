import { answerColumns } from '../../engine/index.js';
import type { OutsideFunctions, OutsideNames } from '../../sheet/index.js';
import type { BundledFunction } from './bundledFunction.js';
import { callFunction } from './callFunction.js';
import { cellName, namespace } from './functionCatalogue.js';

/** Every name of our namespace, also one that no function has: it is stored like the others, and refused. */
export const qtNames: OutsideNames = { has: (name) => name.startsWith(`${namespace}.`) };

/** The bundle as the sheet takes it. */
export function outsideFunctions(bundle: readonly BundledFunction[]): OutsideFunctions {
  const named = new Map(bundle.map((bundled) => [cellName(bundled.entry), bundled]));
  return {
    has: (name) => qtNames.has(name),
    call(name, given, address) {
      const bundled = named.get(name);
      if (bundled === undefined) throw new Error(`there is no function ${name}`);
      return callFunction({ ...bundled, given, address });
    },
    columns(name) {
      const id = named.get(name)?.entry.id;
      return id === undefined ? undefined : (answerColumns[id] ?? 'mixed');
    },
  };
}
