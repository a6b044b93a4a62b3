import { defineConfig } from 'vitest/config';

const report = process.env.OHMWRIGHT_TEST_REPORT;

// eslint-disable-next-line no-restricted-syntax -- vitest reads the default export
export default defineConfig({
  test: {
    include: ['tests/workbench/**/*.test.ts'],
    // A cold start of the editor and of the extension can take half a minute on a loaded machine.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    retry: 0,
    ...(report === undefined ? {} : { reporters: ['default', ['json', { outputFile: report }]] }),
  },
});
