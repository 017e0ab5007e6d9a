/** What the test projects in package.json have in common. */
const tsconfig = {
  target: 'ES2022',
  module: 'CommonJS',
  esModuleInterop: true,
  resolveJsonModule: true,
  isolatedModules: true,
  allowJs: true,
};

module.exports = {
  // One id, so that the projects share their transpiled files.
  id: 'lazaret',
  roots: ['<rootDir>/src', '<rootDir>/functions', '<rootDir>/test'],
  testEnvironment: 'node',
  testTimeout: 20_000,
  globalSetup: '<rootDir>/test/jest/bundleIsThere.ts',
  transform: { '\\.[jt]s$': ['ts-jest', { tsconfig, diagnostics: { exclude: ['**/node_modules/**'] } }] },
  // A few packages come as ES modules, which jest cannot load as they are.
  transformIgnorePatterns: ['/node_modules/(?!linkedom/worker\\.js$|(lodash-es|nanoid|rbush|quickselect|kdbush)/)'],
  moduleNameMapper: {
    '^(\\.{1,2}/.*)\\.js$': '$1',
    '^@observablehq/plot$': '<rootDir>/node_modules/@observablehq/plot/dist/plot.umd.min.js',
    '^d3@7\\.9\\.0/dist/d3\\.min\\.js$': '<rootDir>/node_modules/d3/dist/d3.min.js',
    '^linkedom$': '<rootDir>/node_modules/linkedom/worker.js',
    '^lodash-es$': '<rootDir>/test/jest/lodashParts.cjs',
  },
};
