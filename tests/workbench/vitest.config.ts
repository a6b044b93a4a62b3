import { defineConfig } from 'vitest/config';

// A folder for what the tests came to, for programs to read.
const reports = process.env.OHMWRIGHT_TEST_REPORTS;

// eslint-disable-next-line no-restricted-syntax -- vitest reads the default export
export default defineConfig({
  test: {
    include: ['tests/workbench/**/*.test.ts'],
    // A cold start of the editor and of the extension can take half a minute on a loaded machine.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    retry: 0,
    ...(reports === undefined
      ? {}
      : { reporters: ['default', ['json', { outputFile: `${reports}/workbench.json` }]] }),
  },
});
