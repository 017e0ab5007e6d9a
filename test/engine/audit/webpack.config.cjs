/** Builds the fault planter, for npm run audit-figures alone. */
const path = require('node:path');

module.exports = {
  name: 'audit-figures',
  mode: 'production',
  target: 'node',
  stats: 'errors-warnings',
  entry: { 'audit-figures': './test/audit/faults/run.ts' },
  output: { path: path.resolve(__dirname, '../../../dist') },
  module: { rules: [{ test: /\.ts$/, loader: 'ts-loader', options: { transpileOnly: true, instance: 'figures' } }] },
  resolve: { extensions: ['.ts', '.js'], extensionAlias: { '.js': ['.ts', '.js'] } },
  optimization: { minimize: false },
};
