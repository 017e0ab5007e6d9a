import type { FunctionLibrary } from '../library/functionLibrary.js';

/** The usual functions, loaded when they are first wanted: it takes half a second, and a single call of ours needs none. */
export async function loadedLibrary(): Promise<FunctionLibrary> {
  const { functionLibrary } = await import('../library/functionLibrary.js');
  return functionLibrary();
}
