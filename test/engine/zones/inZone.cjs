/**
 * Run with TZ set: reads calls as JSON from standard input and writes the answers of dist/functions.js to them, with the
 * distance from UTC in January and in July, which shows that the zone was taken.
 */
const fs = require('node:fs');
const ts = require('typescript');

require.extensions['.ts'] = (module, file) => {
  const compilerOptions = { module: ts.ModuleKind.CommonJS, target: ts.ScriptTarget.ES2022 };
  module._compile(ts.transpileModule(fs.readFileSync(file, 'utf8'), { compilerOptions }).outputText, file);
};
const { standInHost } = require('../../host/standInHost.ts');

const host = standInHost();
const calls = JSON.parse(fs.readFileSync(0, 'utf8'));
const offsets = [0, 6].map((month) => new Date(2026, month, 1).getTimezoneOffset() + 0);
process.stdout.write(JSON.stringify({ offsets, answers: calls.map(([id, ...args]) => host.call(id, ...args)) }));
