/** What the compiler and the linter object to, with one reading of the sources for both: { compiler, linter } as JSON. */
import { writeSync } from 'node:fs';
import { resolve } from 'node:path';
import { ESLint } from 'eslint';
import ts from 'typescript';
import config from '../../.eslint.config.mjs';

const host = {
  ...ts.sys,
  onUnRecoverableConfigFileDiagnostic: (fault) => {
    throw new Error(String(fault.messageText));
  },
};
const { fileNames, options, errors } = ts.getParsedCommandLineOfConfigFile(resolve('tsconfig.json'), {}, host);
const program = ts.createProgram(fileNames, options);
const compiler = ts.formatDiagnostics([...errors, ...ts.getPreEmitDiagnostics(program)], {
  getCanonicalFileName: (name) => name,
  getCurrentDirectory: ts.sys.getCurrentDirectory,
  getNewLine: () => '\n',
});

const withProgram = config.map((part) =>
  part.languageOptions?.parserOptions?.projectService === true
    ? { ...part, languageOptions: { ...part.languageOptions, parserOptions: { programs: [program] } } }
    : part,
);
const eslint = new ESLint({ overrideConfigFile: true, baseConfig: withProgram });
const results = await eslint.lintFiles(['.']);
const linter = results.some(({ errorCount, warningCount }) => errorCount + warningCount > 0)
  ? await (await eslint.loadFormatter('stylish')).format(results)
  : '';
if (results.length < 500) throw new Error(`only ${results.length} files were read`);
writeSync(1, JSON.stringify({ compiler, linter }));
