import { customFunctions, type CustomFunctionsGlobal, type Implementation } from '../host/customFunctions.js';
import type { FunctionCatalogue, FunctionEntry } from '../host/functionCatalogue.js';

/** A function of the add-in's bundle with its metadata. */
export interface BundledFunction {
  readonly entry: FunctionEntry;
  readonly implementation: Implementation;
  readonly allowErrors: boolean;
}

/** Loads `functions.js` and `functions.json`, the very files the add-in ships, and joins them by id. */
export async function loadBundle(): Promise<BundledFunction[]> {
  const { global, associated } = customFunctions();
  (window as unknown as { CustomFunctions: CustomFunctionsGlobal }).CustomFunctions = global;
  const [catalogue] = await Promise.all([loadCatalogue(), loadScript('functions.js')]);
  return catalogue.functions.flatMap((entry) => {
    const implementation = associated.get(entry.id.toUpperCase());
    if (implementation === undefined) {
      // A host goes on without it, too: calls of this one give an error, the others work.
      console.error(`functions.js does not associate ${entry.id}`);
      return [];
    }
    return [{ entry, implementation, allowErrors: catalogue.allowErrorForDataTypeAny === true }];
  });
}

async function loadCatalogue(): Promise<FunctionCatalogue> {
  const response = await fetch('functions.json');
  if (!response.ok) throw new Error(`functions.json: ${response.status}`);
  return (await response.json()) as FunctionCatalogue;
}

function loadScript(src: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement('script');
    script.src = src;
    script.onload = () => resolve();
    script.onerror = () => reject(new Error(`${src} does not load`));
    document.head.append(script);
  });
}
