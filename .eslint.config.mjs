import tseslint from 'typescript-eslint';

export default tseslint.config(
  { ignores: ['dist/**', 'coverage/**', '.cache/**', 'server/src/text/generated/**'] },
  {
    files: ['**/*.ts'],
    extends: [tseslint.configs.strictTypeChecked, tseslint.configs.stylisticTypeChecked],
    languageOptions: { parserOptions: { project: './tsconfig.json' } },
    rules: {
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
      '@typescript-eslint/consistent-type-imports': 'error',
      'no-restricted-syntax': [
        'error',
        { selector: 'ExportDefaultDeclaration', message: 'No default exports.' },
      ],
      'max-lines': ['error', { max: 400, skipBlankLines: true, skipComments: true }],
    },
  },
  {
    // Arguments are put on the stack: a list that a file can make as long as it likes would fill it. The lists of the
    // format are written by hand.
    files: ['server/src/**/*.ts'],
    ignores: ['server/src/format/**'],
    rules: {
      'no-restricted-syntax': [
        'error',
        { selector: 'ExportDefaultDeclaration', message: 'No default exports.' },
        {
          selector: ':matches(CallExpression, NewExpression) > SpreadElement',
          message: 'No list is spread into arguments: take a loop, or leastOf and greatestOf.',
        },
        {
          selector: 'CallExpression > MemberExpression.callee[property.name="apply"]',
          message: 'No list is spread into arguments: take a loop.',
        },
      ],
    },
  },
  { files: ['tests/vitest.config.ts'], rules: { 'no-restricted-syntax': 'off' } },
);
