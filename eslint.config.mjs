import { defineConfig, globalIgnores } from 'eslint/config';
import nextVitals from 'eslint-config-next/core-web-vitals';
import nextTypescript from 'eslint-config-next/typescript';

const typescript = ['**/*.{ts,tsx}'];

export default defineConfig([
  ...nextVitals,
  ...nextTypescript,
  globalIgnores(['.next/', 'data/', 'lib/db/generated/', 'next-env.d.ts', 'playwright-report/', 'test-results/']),
  {
    name: 'every file',
    linterOptions: { reportUnusedDisableDirectives: 'error', noInlineConfig: true },
    rules: {
      eqeqeq: 'error',
      'no-console': 'off',
      'no-eval': 'error',
      'no-param-reassign': 'error',
      'no-var': 'error',
      'object-shorthand': 'error',
      'prefer-const': 'error',
    },
  },
  {
    name: 'rules that need types',
    files: typescript,
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      '@typescript-eslint/await-thenable': 'error',
      '@typescript-eslint/ban-ts-comment': ['error', { 'ts-expect-error': true, 'ts-ignore': true, 'ts-nocheck': true }],
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-floating-promises': 'error',
      // An event handler may be asynchronous: React Hook Form's are.
      '@typescript-eslint/no-misused-promises': ['error', { checksVoidReturn: { attributes: false } }],
      '@typescript-eslint/no-non-null-assertion': 'error',
      '@typescript-eslint/no-unsafe-argument': 'error',
      '@typescript-eslint/no-unsafe-assignment': 'error',
      '@typescript-eslint/no-unsafe-call': 'error',
      '@typescript-eslint/no-unsafe-member-access': 'error',
      '@typescript-eslint/no-unsafe-return': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_' }],
      '@typescript-eslint/only-throw-error': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
    },
  },
  {
    name: 'outside of the pages a name that begins with use is no hook',
    files: ['lib/**', 'scripts/**'],
    rules: { 'react-hooks/rules-of-hooks': 'off' },
  },
  {
    name: 'settings are read in one place',
    files: ['app/**', 'lib/**', 'proxy.ts'],
    ignores: ['lib/server/env.ts'],
    rules: {
      'no-restricted-properties': ['error', { object: 'process', property: 'env', message: 'Settings are read in lib/server/env.ts.' }],
    },
  },
  {
    name: 'the calculation gives the same for the same',
    files: ['lib/core/**', 'lib/units/**', 'lib/reference/**', 'lib/charts/**', 'lib/wording/**'],
    rules: {
      'no-restricted-properties': [
        'error',
        { object: 'process', property: 'env', message: 'Settings are read in lib/server/env.ts.' },
        { object: 'Date', property: 'now', message: 'No clock here: a time is an input.' },
        { object: 'performance', property: 'now', message: 'No clock here: a time is an input.' },
        { object: 'Math', property: 'random', message: 'Draws come out of the seeded stream.' },
        { object: 'crypto', property: 'randomUUID', message: 'Draws come out of the seeded stream.' },
      ],
      'no-restricted-syntax': ['error', { selector: 'NewExpression[callee.name="Date"][arguments.length=0]', message: 'No clock here: a time is an input.' }],
      'no-restricted-globals': ['error', 'fetch', 'window', 'document', 'localStorage', 'setTimeout', 'setInterval'],
    },
  },
  {
    name: 'texts on paper keep their words whole',
    files: ['lib/pdf/**/*.tsx'],
    // One is the element to use instead; the other sets single lines in a picture, which never break.
    ignores: ['lib/pdf/render/words.tsx', 'lib/pdf/render/scene-drawing.tsx'],
    rules: {
      'no-restricted-imports': ['error', { paths: [{ name: '@react-pdf/renderer', importNames: ['Text'], message: 'Use Words of lib/pdf/render: the writer breaks words where their font changes.' }] }],
    },
  },
  {
    name: 'a test in a browser leaves nothing open in it',
    files: ['tests/e2e/*.ts'],
    rules: {
      'no-restricted-imports': ['error', { paths: [{ name: '@playwright/test', importNames: ['test'], message: 'Use test of tests/e2e/support/test: it closes what a test opened.' }] }],
    },
  },
  {
    name: 'tests say what they tolerate, and all run',
    files: ['tests/**'],
    rules: {
      // In a test a value that is not there ends it, as it should.
      '@typescript-eslint/no-non-null-assertion': 'off',
      'no-restricted-syntax': [
        'error',
        { selector: 'MemberExpression[property.name="toBeCloseTo"]', message: 'Its second argument is digits, not a tolerance: use expectWithin.' },
        { selector: 'MemberExpression[object.name=/^(it|test|describe)$/][property.name=/^(skip|only|todo|fixme)$/]', message: 'Every test runs.' },
      ],
    },
  },
]);
