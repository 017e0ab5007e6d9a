import { bundledFunctions, type BundledFunction } from '../calls/bundledFunction.js';
import { customFunctions, type CustomFunctionsGlobal } from '../calls/customFunctions.js';
import type { FunctionCatalogue } from '../calls/functionCatalogue.js';

/** Loads `functions.js` and `functions.json`, the very files the add-in ships, and joins them by id. */
export async function loadBundle(): Promise<BundledFunction[]> {
  const { global, associated } = customFunctions();
  (window as unknown as { CustomFunctions: CustomFunctionsGlobal }).CustomFunctions = global;
  const [catalogue] = await Promise.all([loadCatalogue(), loadScript('functions.js')]);
  return bundledFunctions(catalogue, associated);
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
