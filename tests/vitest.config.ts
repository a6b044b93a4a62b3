import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/*
 * Which tests run: all of them; with `--mode quick` those for the inner loop; with `--mode programs` those that need
 * other programs than Node. The tests in the real editor have a configuration of their own.
 */

// A folder for what the tests came to, for programs to read.
const reports = process.env.OHMWRIGHT_TEST_REPORTS;

/** Those that draw or go through hundreds of procedures or circuits, start the program many times, or want it packed. */
export const long = [
  'tests/circuit/voltage-window.test.ts',
  'tests/client/package.test.ts',
  'tests/editor/completion-everywhere.test.ts',
  'tests/format/agreement.test.ts',
  'tests/fuzz/fuzz.test.ts',
  'tests/host/write-file.test.ts',
  'tests/oracle/potentiometers.test.ts',
  'tests/oracle/random-procedure.test.ts',
  'tests/outside/graphs.test.ts',
  'tests/project/damaged.test.ts',
  'tests/fixes/fix-all.test.ts',
  'tests/fixes/fix.test.ts',
  'tests/protocol/editor-channel.test.ts',
  'tests/project/large-files.test.ts',
  'tests/protocol/hang.test.ts',
  'tests/protocol/lost.test.ts',
  'tests/protocol/refused.test.ts',
  'tests/rules/mutants-routines.test.ts',
  'tests/rules/mutants.test.ts',
  'tests/rules/oracle-network.test.ts',
  'tests/rules/oracle-power.test.ts',
  'tests/rules/oracle-routines.test.ts',
  'tests/rules/oracle-waivers.test.ts',
  'tests/rules/oracle.test.ts',
  'tests/text/damaged.test.ts',
  'tests/text/nothing-lost.test.ts',
  'tests/text/silent.test.ts',
  'tests/text/unread-values.test.ts',
];

/** Those that are skipped where another program is missing: all that call `describeWith`. */
export function needingPrograms(): readonly string[] {
  const folder = fileURLToPath(new URL('.', import.meta.url));
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(
      (path) => path.endsWith('.test.ts') && readFileSync(folder + path, 'utf8').includes('describeWith('),
    )
    .map((path) => `tests/${path.replaceAll('\\', '/')}`);
}

export default defineConfig(({ mode }) => ({
  test: {
    include: mode === 'programs' ? [...needingPrograms()] : ['tests/**/*.test.ts'],
    // The real editor has the machine for itself: `npm run test:workbench`.
    exclude: ['tests/workbench/**', ...(mode === 'quick' ? [...long, ...needingPrograms()] : [])],
    // Half of the time of the quick ones would go into loading the same modules for each file anew.
    isolate: mode !== 'quick',
    // By itself vitest leaves one processor free, which is half of a machine with two.
    maxWorkers: '100%',
    testTimeout: 120_000,
    ...(reports === undefined
      ? {}
      : { reporters: ['default', ['json', { outputFile: `${reports}/unit.json` }]] }),
  },
}));
