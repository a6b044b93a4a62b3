// Bundles the benchmark and runs it.
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { alias } from './libraries.mjs';

process.chdir(fileURLToPath(new URL('../..', import.meta.url)));
await build({
  entryPoints: ['tests/benchmarks/benchmark.ts'],
  outfile: 'dist/benchmark.js',
  bundle: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  alias,
  external: ['yaml-language-server', 'vscode-languageserver*'],
  banner: {
    js: `import { createRequire as requireFrom } from 'node:module';\nconst require = requireFrom(import.meta.url);`,
  },
  logLevel: 'warning',
});
await import('../../dist/benchmark.js');
