import { defineConfig } from 'vitest/config';

// A folder for what the tests came to, for programs to read.
const reports = process.env.OHMWRIGHT_TEST_REPORTS;

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    // The real editor has the machine for itself: `npm run test:workbench`.
    exclude: ['tests/workbench/**'],
    testTimeout: 120_000,
    ...(reports === undefined
      ? {}
      : { reporters: ['default', ['json', { outputFile: `${reports}/unit.json` }]] }),
  },
});
