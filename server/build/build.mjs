// Bundles the command line into dist/, with no dependency left outside.
import { rm } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('../..', import.meta.url));
await rm(new URL('../../dist/', import.meta.url), { recursive: true, force: true });

await build({
  absWorkingDir: root,
  entryPoints: { cli: 'server/src/cli/main.ts' },
  outdir: 'dist',
  bundle: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  minify: true,
  legalComments: 'eof',
  banner: {
    // Some of what is bundled asks for Node's own modules the old way.
    js: `#!/usr/bin/env node
import { createRequire } from 'node:module';
const require = createRequire(import.meta.url);`,
  },
  logLevel: 'warning',
});
