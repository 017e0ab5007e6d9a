import js from '@eslint/js';
import tseslint from 'typescript-eslint';

/** Data tables, whose length is that of their subject. */
const tables = [
  'functions/examples.ts',
  'src/engine/dimensions/dimensions.ts',
  'src/engine/index.ts',
  'src/engine/limits/limits.ts',
  'src/engine/references/*.ts',
  'src/engine/result/problem.ts',
  'src/engine/rules/signs/signWords.ts',
  'src/engine/text/message.ts',
  'src/engine/units/quantity.ts',
];

const engine = { files: ['src/base/**/*.ts', 'src/engine/**/*.ts'] };

const verbs = {
  selector: 'FunctionDeclaration[id.name=/^(get|calculate|compute)[A-Z]/]',
  message: 'A function is named for the quantity it gives.',
};
const casts = {
  selector: 'TSAsExpression:not([typeAnnotation.typeName.name="const"])',
  message: 'Casts stand in src/engine/units alone.',
};
const newer = {
  selector: 'CallExpression[callee.property.name=/^(at|replaceAll|findLast|findLastIndex|toSorted|hasOwn)$/]',
  message: 'Some hosts run functions on an engine of 2020, which lacks this method.',
};
const setAside = {
  selector: 'MemberExpression[object.name=/^(it|test|describe)$/][property.name=/^(only|skip|todo|failing)$/]',
  message: 'No test is set aside.',
};

export default tseslint.config(
  { ignores: ['dist/', 'node_modules/', 'coverage/'] },
  js.configs.recommended,
  {
    files: ['**/*.{js,cjs}'],
    languageOptions: {
      sourceType: 'commonjs',
      globals: {
        require: 'readonly',
        module: 'writable',
        process: 'readonly',
        __dirname: 'readonly',
        Buffer: 'readonly',
      },
    },
  },
  {
    files: ['**/*.ts'],
    extends: [tseslint.configs.strict],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      eqeqeq: ['error', 'always'],
      'no-restricted-syntax': ['error', verbs],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        {
          allowDefaultCaseForExhaustiveSwitch: false,
          considerDefaultExhaustiveForUnions: false,
          requireDefaultForNonUnion: false,
        },
      ],
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/await-thenable': 'error',
      '@typescript-eslint/no-unnecessary-type-assertion': 'error',
      '@typescript-eslint/restrict-plus-operands': 'error',
      '@typescript-eslint/explicit-module-boundary-types': 'error',
    },
  },
  {
    files: ['src/**/*.ts', 'functions/**/*.ts'],
    rules: {
      'max-lines': ['error', { max: 150 }],
      'max-lines-per-function': ['error', { max: 40 }],
    },
  },
  {
    ...engine,
    rules: {
      'no-restricted-syntax': ['error', verbs, casts, newer],
      'no-console': 'error',
      'no-restricted-globals': ['error', 'Date', 'process', 'performance', 'window', 'document', 'fetch', 'setTimeout'],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'The engine draws no numbers.' },
      ],
    },
  },
  { files: ['src/engine/units/**/*.ts'], rules: { 'no-restricted-syntax': ['error', verbs, newer] } },
  {
    // A cell holds anything, and the metadata generator reads only literal types.
    files: ['functions/**/*.ts'],
    rules: {
      '@typescript-eslint/no-explicit-any': 'off',
      '@typescript-eslint/explicit-module-boundary-types': ['error', { allowArgumentsExplicitlyTypedAsAny: true }],
      'no-restricted-syntax': ['error', verbs, newer],
      'max-lines': ['error', { max: 150, skipComments: true }],
    },
  },
  { files: tables, rules: { 'max-lines': 'off' } },
  {
    files: ['test/**/*.ts'],
    rules: {
      'no-restricted-syntax': ['error', setAside],
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/explicit-module-boundary-types': 'off',
    },
  },
);
