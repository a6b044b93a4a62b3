import { defineConfig } from 'vitest/config';

const report = process.env.OHMWRIGHT_TEST_REPORT;

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 120_000,
    ...(report === undefined ? {} : { reporters: ['default', ['json', { outputFile: report }]] }),
  },
});
