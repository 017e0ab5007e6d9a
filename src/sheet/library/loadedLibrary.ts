import type { FunctionLibrary } from './functionLibrary.js';

/** The usual functions, loaded when they are first wanted: it takes half a second, and a call of a function from outside needs none. */
export async function loadedLibrary(): Promise<FunctionLibrary> {
  const { functionLibrary } = await import('./functionLibrary.js');
  return functionLibrary();
}
