// Bundles the fuzzer and runs it: `npm run fuzz -- [KIND [SEED]]`.
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { alias } from './libraries.mjs';

process.chdir(fileURLToPath(new URL('../..', import.meta.url)));
await build({
  entryPoints: ['tests/fuzz/main.ts'],
  outfile: '.cache/fuzz.mjs',
  bundle: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  alias,
  external: ['vscode-languageserver*'],
  banner: {
    js: `import { createRequire as requireFrom } from 'node:module';\nconst require = requireFrom(import.meta.url);`,
  },
  logLevel: 'warning',
});
await import('../../.cache/fuzz.mjs');
