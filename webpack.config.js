const fs = require('node:fs');
const path = require('node:path');
const ts = require('typescript');
const webpack = require('webpack');
const CustomFunctionsMetadataPlugin = require('custom-functions-metadata-plugin');
const MiniCssExtractPlugin = require('mini-css-extract-plugin');
const { AddInFiles } = require('./src/app/addin/addInFiles.cjs');

const dist = path.resolve(__dirname, 'dist');
const resolve = { extensions: ['.ts', '.js'], extensionAlias: { '.js': ['.ts', '.js'] } };

/** Types are checked elsewhere. Each bundle has an instance of its own, since the compiler options differ. */
const transpiled = (instance, compilerOptions = {}, before = []) => ({
  test: /\.ts$/,
  loader: 'ts-loader',
  options: { transpileOnly: true, instance, compilerOptions, getCustomTransformers: () => ({ before }) },
});

/** What only tests and documents read of a rule or a limit: the cell functions are shipped without it. */
const forReaders = { rules: ['about', 'examples'], limits: ['decides'] };
const withoutTextsForReaders = (context) => (file) => {
  const room = /src\/engine\/(rules|limits)\//.exec(file.fileName)?.[1];
  if (room === undefined) return file;
  const visit = (node) =>
    ts.isPropertyAssignment(node) && ts.isIdentifier(node.name) && forReaders[room].includes(node.name.text)
      ? undefined
      : ts.visitEachChild(node, visit, context);
  return ts.visitNode(file, visit);
};

// Some hosts run the bundle where every look-up of a global is slow: those that hot loops need become locals.
const globals = 'Math,NaN,Number,Object,Array,Map,Set,String,Float64Array,Uint32Array,Uint8Array';
const globalsOnce = [
  new webpack.BannerPlugin({ raw: true, banner: `((${globals})=>{` }),
  new webpack.BannerPlugin({ raw: true, footer: true, banner: `})(${globals});` }),
];

const wrappers = fs
  .readdirSync(path.resolve(__dirname, 'functions'))
  .map((name) => path.resolve(__dirname, 'functions', name))
  .filter((file) => file.endsWith('.ts') && fs.readFileSync(file, 'utf8').includes('@customfunction'));
// One entry that imports them all, whichever stand in the folder, so that what they share is one scope.
const allWrappers = wrappers.map((file) => `import ${JSON.stringify(file)};`).join('');

// The add-in's bundle and its metadata, as host programs load them. Some hosts run functions on an older engine than
// today's browsers: the bundle keeps to ES2020.
const functions = {
  name: 'functions',
  entry: { functions: `data:text/javascript,${encodeURIComponent(allWrappers)}` },
  target: ['web', 'es2020'],
  module: {
    parser: { javascript: { exportsPresence: 'error' } },
    rules: [transpiled('functions', { target: 'ES2020', noEmit: false }, [withoutTextsForReaders])],
  },
  performance: { hints: false },
  plugins: [
    new CustomFunctionsMetadataPlugin({ input: wrappers, output: 'functions.json' }),
    new AddInFiles(),
    ...globalsOnce,
  ],
};

// The embedded sheet. Most of the sheet component comes minified, and the page is read from this machine: no minifier.
const page = {
  name: 'page',
  entry: { page: './src/app/page/main.ts' },
  output: { path: dist, chunkFilename: 'page/[id].js' },
  module: {
    rules: [
      transpiled('page'),
      { test: /\.css$/, use: [MiniCssExtractPlugin.loader, 'css-loader'] },
      { test: /\.html$/, type: 'asset/resource', generator: { filename: '[name][ext]' } },
    ],
  },
  plugins: [new MiniCssExtractPlugin({ filename: 'page.css' })],
  optimization: { minimize: false },
  performance: { hints: false },
};

// The local server behind npm start.
const serve = {
  name: 'serve',
  target: 'node',
  entry: { serve: './src/app/serve/main.ts' },
  module: { rules: [transpiled('serve')] },
  optimization: { minimize: false },
  node: { __dirname: false },
};

// The command line. The formula engine, the plots and the writer of templates are in files of their own, read when needed.
// The engine's ES modules fail on Node in a dependency, so its CommonJS build is taken.
const commandLine = {
  name: 'command-line',
  target: 'node20',
  entry: { lazaret: ['./src/app/cli/main.ts', 'excelize-wasm/excelize.wasm.gz'] },
  output: { path: dist, chunkFilename: 'lazaret/[id].js' },
  module: {
    rules: [
      transpiled('command-line'),
      { test: /\.wasm\.gz$/, type: 'asset/resource', generator: { filename: '[base]' } },
    ],
  },
  resolve: { ...resolve, conditionNames: ['node', 'require', 'default'], alias: { canvas: false } },
  plugins: [new webpack.BannerPlugin({ raw: true, entryOnly: true, banner: '#!/usr/bin/env node' })],
  optimization: { minimize: false },
  performance: { hints: false },
  node: { __dirname: false },
};

// Programs for whoever works on this: `webpack --env tool=bench` builds dist/bench.js.
const tools = {
  bench: './test/bench/run.ts',
  'audit-figures': './test/engine/audit/faults/run.ts',
  'note-figures': './test/notes/run.ts',
  docs: './src/app/cli/docs/main.ts',
};
const tool = (name) => ({
  name,
  target: 'node',
  entry: { [name]: tools[name] },
  module: { rules: [transpiled(name)] },
  externals: { 'playwright-core': 'commonjs playwright-core', exceljs: 'commonjs exceljs' },
  optimization: { minimize: false },
});

module.exports = (env = {}) =>
  (env.tool ? [tool(env.tool)] : [functions, page, serve, commandLine]).map((config) => ({
    mode: 'production',
    stats: 'errors-warnings',
    output: { path: dist },
    resolve,
    ...config,
  }));
