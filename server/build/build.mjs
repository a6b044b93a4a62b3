// Bundles the command line, the language server and the extension into dist/, with no dependency left outside. The
// extension and the server are CommonJS, because that is what the editor starts; `.cjs` says so in a package of modules.
import { rm, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { alias } from './libraries.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
// With `--sourcemap`, for stepping through it.
const sourcemap = process.argv.includes('--sourcemap');
await rm(new URL('../../dist/', import.meta.url), { recursive: true, force: true });

const common = {
  absWorkingDir: root,
  outdir: 'dist',
  bundle: true,
  platform: 'node',
  target: 'node20',
  alias,
  minify: !sourcemap,
  sourcemap,
  legalComments: 'eof',
  logLevel: 'warning',
};

const bundles = [
  {
    ...common,
    entryPoints: { cli: 'server/src/cli/main.ts' },
    format: 'esm',
    banner: {
      // Some of what is bundled asks for Node's own modules the old way.
      js: `#!/usr/bin/env node
import { createRequire } from 'node:module';
const require = createRequire(import.meta.url);`,
    },
  },
  {
    ...common,
    entryPoints: { extension: 'client/src/extension.ts' },
    format: 'cjs',
    outExtension: { '.js': '.cjs' },
    external: ['vscode'],
  },
];

bundles.push({
  ...common,
  entryPoints: { server: 'server/src/host/language-server-node.ts' },
  format: 'cjs',
  outExtension: { '.js': '.cjs' },
});

await Promise.all(bundles.map((options) => build(options)));

// The page that findings link to.
await build({
  absWorkingDir: root,
  stdin: { contents: `export * from './server/src/rules/handbook.ts';`, resolveDir: root, loader: 'ts' },
  bundle: true,
  platform: 'node',
  format: 'esm',
  outfile: 'dist/handbook.mjs',
  banner: {
    js: `import { createRequire } from 'node:module';\nconst require = createRequire(import.meta.url);`,
  },
  logLevel: 'warning',
});
const { handbook: rules } = await import('../../dist/handbook.mjs');
await writeFile(new URL('../../dist/rules.md', import.meta.url), rules().text);
await rm(new URL('../../dist/handbook.mjs', import.meta.url));
