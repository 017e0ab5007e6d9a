/** Lets a plain Node process of a test load the sources: TypeScript is transpiled as it is read. */
const fs = require('node:fs');
const Module = require('node:module');
const ts = require('typescript');

require.extensions['.ts'] = (module, file) => {
  const { outputText } = ts.transpileModule(fs.readFileSync(file, 'utf8'), {
    compilerOptions: { module: ts.ModuleKind.CommonJS, target: ts.ScriptTarget.ES2022, esModuleInterop: true },
  });
  module._compile(outputText, file);
};

const resolve = Module._resolveFilename;
Module._resolveFilename = function (name, parent, ...rest) {
  const isOurs = /^\.{1,2}\/.*\.js$/.test(name) && !/node_modules/.test(parent?.filename ?? '');
  return resolve.call(this, isOurs ? name.replace(/\.js$/, '.ts') : name, parent, ...rest);
};
