import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

const bundle = 'dist/functions.js';
let isChecked = false;

/** Many tests run on the bundle that people get: it is built where it is missing, and said to be old where it is. */
export default function bundleIsThere(): void {
  if (isChecked) return;
  isChecked = true;
  if (!existsSync(bundle)) {
    const webpack = require.resolve('webpack-cli/bin/cli.js');
    spawnSync(process.execPath, [webpack, '--config-name', 'functions'], { stdio: 'inherit' });
  } else if (statSync(bundle).mtimeMs < Math.max(newestIn('src'), newestIn('functions'))) {
    process.stderr.write(`\n${bundle} is older than its sources; npx webpack --config-name functions rebuilds it\n`);
  }
}

function newestIn(folder: string): number {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  return Math.max(...names.map((name) => statSync(join(folder, name)).mtimeMs));
}
