import tseslint from 'typescript-eslint';

const noDefaultExports = { selector: 'ExportDefaultDeclaration', message: 'No default exports.' };

const noSilentDefault = {
  selector: 'SwitchCase[test=null]',
  message: 'No default here: a verb or kind that is not named would pass in silence.',
};

// Arguments are put on the stack: a list that a file can make as long as it likes would fill it.
const noSpreadLists = [
  {
    selector: ':matches(CallExpression, NewExpression) > SpreadElement',
    message: 'No list is spread into arguments: take a loop, or leastOf and greatestOf.',
  },
  {
    selector: 'CallExpression > MemberExpression.callee[property.name="apply"]',
    message: 'No list is spread into arguments: take a loop.',
  },
];

export default tseslint.config(
  { ignores: ['dist/**', 'coverage/**', '.cache/**', 'server/src/text/generated/**'] },
  {
    files: ['**/*.ts'],
    extends: [tseslint.configs.strictTypeChecked, tseslint.configs.stylisticTypeChecked],
    languageOptions: { parserOptions: { project: './tsconfig.json' } },
    rules: {
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      // A switch over a union names each of its members, so that a new one is named by the compiler; over anything else it
      // has a default.
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        {
          considerDefaultExhaustiveForUnions: false,
          allowDefaultCaseForExhaustiveSwitch: false,
          requireDefaultForNonUnion: true,
        },
      ],
      '@typescript-eslint/consistent-type-imports': 'error',
      'no-restricted-syntax': ['error', noDefaultExports],
      'max-lines': ['error', { max: 400, skipBlankLines: true, skipComments: true }],
    },
  },
  {
    // The lists of the format are written by hand.
    files: ['server/src/**/*.ts'],
    ignores: ['server/src/format/**'],
    rules: { 'no-restricted-syntax': ['error', noDefaultExports, ...noSpreadLists] },
  },
  {
    // The last that fits a file counts, so these name the rules of those above again.
    files: ['server/src/{paths,bench,readings,rules}/**/*.ts'],
    rules: { 'no-restricted-syntax': ['error', noDefaultExports, ...noSpreadLists, noSilentDefault] },
  },
  { files: ['tests/vitest.config.ts'], rules: { 'no-restricted-syntax': 'off' } },
);
