import { readFileSync, writeFileSync } from 'node:fs';
import type { FunctionCatalogue } from '../../calls/functionCatalogue.js';
import { generatedParts, withGeneratedPart } from './generatedParts.js';

// npm runs this in the project's folder, after the build of functions.json.
const catalogue: FunctionCatalogue = JSON.parse(readFileSync('dist/functions.json', 'utf8'));
for (const part of generatedParts(catalogue)) {
  writeFileSync(part.file, withGeneratedPart(readFileSync(part.file, 'utf8'), part));
}
