import type { FunctionLibrary } from './functionLibrary.js';

/** The usual functions, loaded on first use: that takes half a second, and a call of a function from outside needs none of them. */
export async function loadedLibrary(): Promise<FunctionLibrary> {
  const { functionLibrary } = await import('./functionLibrary.js');
  return functionLibrary();
}
