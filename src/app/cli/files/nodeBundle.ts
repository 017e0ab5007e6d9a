import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { compileFunction } from 'node:vm';
import { bundledFunctions, type BundledFunction } from '../../calls/bundledFunction.js';
import { customFunctions } from '../../calls/customFunctions.js';
import type { FunctionCatalogue } from '../../calls/functionCatalogue.js';

interface NodeBundle {
  readonly catalogue: FunctionCatalogue;
  readonly functions: readonly BundledFunction[];
}

/** `functions.js` and `functions.json` of a folder, the very files the add-in ships. */
export function nodeBundle(folder: string): NodeBundle {
  const read = (file: string): string => readFileSync(join(folder, file), 'utf8');
  const catalogue = JSON.parse(read('functions.json')) as FunctionCatalogue;
  const { global, associated } = customFunctions();
  // Compiled as a function: in this realm, so that its arrays are ours, and without a global of its own.
  compileFunction(read('functions.js'), ['CustomFunctions'], { filename: 'functions.js' })(global);
  return { catalogue, functions: bundledFunctions(catalogue, associated) };
}
