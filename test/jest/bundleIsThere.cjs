/** Many tests run on the bundle that people get: it is built where it is missing, and said to be old where it is. */
const { spawnSync } = require('node:child_process');
const fs = require('node:fs');
const path = require('node:path');

const bundle = 'dist/functions.js';

function newestIn(folder) {
  const files = fs.readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return Math.max(...files.map((file) => fs.statSync(path.join(file.parentPath ?? file.path, file.name)).mtimeMs));
}

module.exports = () => {
  if (!fs.existsSync(bundle)) {
    const webpack = require.resolve('webpack-cli/bin/cli.js');
    spawnSync(process.execPath, [webpack, '--config-name', 'functions'], { stdio: 'inherit' });
  } else if (fs.statSync(bundle).mtimeMs < Math.max(newestIn('src'), newestIn('functions'))) {
    process.stderr.write(`\n${bundle} is older than its sources; npx webpack --config-name functions makes it anew\n`);
  }
};
