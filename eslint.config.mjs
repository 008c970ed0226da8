import jsdoc from 'eslint-plugin-jsdoc';
import { configs as regexp } from 'eslint-plugin-regexp';
import tseslint from 'typescript-eslint';

const sources = ['packages/*/src/**/*.ts', 'adapters/*/src/**/*.ts'];
const tests = ['**/*.test.ts', 'tests/**/*.ts'];

/** What a pure package must be given instead of taking it: time, chance and a place to write. */
const impure = [
  { object: 'Date', property: 'now', message: 'The time is passed in.' },
  { object: 'performance', property: 'now', message: 'The time is passed in.' },
  { object: 'Math', property: 'random', message: 'Chance is passed in.' },
];

const grammar = [
  { selector: 'TSEnumDeclaration', message: 'Write a union of literals.' },
  { selector: 'TSModuleDeclaration[kind="namespace"]', message: 'Write a module.' },
  { selector: 'TSParameterProperty', message: 'Write the field and its assignment.' },
  { selector: 'ExportAllDeclaration', message: 'Name what is exported.' },
];

const presentTime = {
  selector: 'NewExpression[callee.name="Date"][arguments.length=0]',
  message: 'The time is passed in.',
};

export default tseslint.config(
  { ignores: ['**/dist/', '.prepared/'] },
  {
    files: ['**/*.ts'],
    extends: [tseslint.configs.strictTypeChecked],
    languageOptions: {
      parserOptions: {
        project: 'tests/tsconfig.lint.json',
        tsconfigRootDir: import.meta.dirname,
      },
    },
    rules: {
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/consistent-type-exports': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
      // Numbers in a template are what this project is about.
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      '@typescript-eslint/max-params': ['error', { max: 3 }],
      'no-restricted-syntax': ['error', ...grammar],
      'no-restricted-exports': [
        'error',
        {
          restrictDefaultExports: {
            direct: true,
            named: true,
            defaultFrom: true,
            namedFrom: true,
            namespaceFrom: true,
          },
        },
      ],
      // Taking a key off a record is written by naming it beside the rest.
      '@typescript-eslint/no-unused-vars': ['error', { ignoreRestSiblings: true }],
      eqeqeq: 'error',
    },
  },
  {
    files: ['**/*.ts', '**/*.mjs'],
    extends: [regexp['flat/recommended']],
    rules: {
      // A typed answer comes from a stranger: no pattern may take more than linear time over it.
      'regexp/no-super-linear-backtracking': ['error', { report: 'potential' }],
      'regexp/no-super-linear-move': 'error',
    },
  },
  {
    files: sources,
    ignores: tests,
    plugins: { jsdoc },
    rules: {
      'jsdoc/require-jsdoc': [
        'error',
        {
          publicOnly: { esm: true },
          require: { FunctionDeclaration: true, ClassDeclaration: true, MethodDefinition: false },
          contexts: [
            'TSInterfaceDeclaration',
            'TSTypeAliasDeclaration',
            'ExportNamedDeclaration > VariableDeclaration',
          ],
        },
      ],
      'jsdoc/require-description': 'error',
      'jsdoc/no-types': 'error',
      'jsdoc/check-param-names': ['error', { disableMissingParamChecks: true }],
      'jsdoc/check-tag-names': ['error', { typed: true, definedTags: ['defaultValue'] }],
    },
  },
  {
    files: sources,
    ignores: [...tests, '**/tables/**', '**/words/**'],
    rules: { 'max-lines': ['warn', { max: 500, skipComments: true }] },
  },
  {
    files: ['packages/*/src/**/*.ts'],
    ignores: tests,
    rules: {
      'no-console': 'error',
      'no-restricted-globals': ['error', 'fetch', 'process', 'setTimeout', 'setInterval'],
      'no-restricted-properties': ['error', ...impure],
      'no-restricted-syntax': ['error', ...grammar, presentTime],
    },
  },
  {
    files: tests,
    rules: {
      '@typescript-eslint/no-non-null-assertion': 'off',
      // A row of test.each arrives as positional parameters.
      '@typescript-eslint/max-params': 'off',
    },
  },
  {
    files: ['vitest.config.ts'],
    rules: { 'no-restricted-exports': 'off' },
  },
);
