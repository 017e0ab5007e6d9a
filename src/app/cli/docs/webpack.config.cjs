/** Builds the writer of the README's tables, for npm run docs alone. */
const path = require('node:path');

module.exports = {
  name: 'docs',
  mode: 'production',
  target: 'node',
  entry: { docs: './src/app/cli/docs/main.ts' },
  output: { path: path.resolve(__dirname, '../../../../dist') },
  module: { rules: [{ test: /\.ts$/, loader: 'ts-loader', options: { transpileOnly: true, instance: 'docs' } }] },
  resolve: { extensions: ['.ts', '.js'], extensionAlias: { '.js': ['.ts', '.js'] } },
  optimization: { minimize: false },
};
