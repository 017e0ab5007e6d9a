import type { FunctionCatalogue, FunctionEntry } from './functionCatalogue.js';
import type { Implementation } from './customFunctions.js';

/** A function of the add-in's bundle with its metadata. */
export interface BundledFunction {
  readonly entry: FunctionEntry;
  readonly implementation: Implementation;
  readonly allowErrors: boolean;
}

/** Joins `functions.json` and what `functions.js` associated by id. */
export function bundledFunctions(
  catalogue: FunctionCatalogue,
  associated: ReadonlyMap<string, Implementation>,
): BundledFunction[] {
  return catalogue.functions.flatMap((entry) => {
    const implementation = associated.get(entry.id.toUpperCase());
    if (implementation === undefined) {
      // Hosts carry on without it too: calls of this function give an error, the others work.
      console.error(`functions.js does not associate ${entry.id}`);
      return [];
    }
    return [{ entry, implementation, allowErrors: catalogue.allowErrorForDataTypeAny === true }];
  });
}
