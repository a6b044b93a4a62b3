// Bundles the benchmark and runs it.
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

process.chdir(fileURLToPath(new URL('../..', import.meta.url)));
await build({
  entryPoints: ['tests/benchmarks/benchmark.ts'],
  outfile: 'dist/benchmark.js',
  bundle: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  banner: {
    js: `import { createRequire } from 'node:module';\nconst require = createRequire(import.meta.url);`,
  },
  logLevel: 'warning',
});
await import('../../dist/benchmark.js');
