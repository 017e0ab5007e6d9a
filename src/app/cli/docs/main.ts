import { readFileSync, writeFileSync } from 'node:fs';
import { exampleTopics } from '../../../../functions/examples.js';
import type { FunctionCatalogue } from '../../calls/functionCatalogue.js';
import { functionTables } from './functionTables.js';
import { withGeneratedPart } from './withGeneratedPart.js';

// npm runs this in the project's folder, after the build of functions.json.
const catalogue: FunctionCatalogue = JSON.parse(readFileSync('dist/functions.json', 'utf8'));
const readme = readFileSync('README.md', 'utf8');
writeFileSync('README.md', withGeneratedPart(readme, functionTables(catalogue, exampleTopics)));
