// What is bundled: the command line, the extension and the language server, with no dependency left outside.
import { fileURLToPath } from 'node:url';
import { alias } from './libraries.mjs';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** How esbuild makes each of them. With `sourcemap`, for stepping through it. */
export function bundles(sourcemap) {
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
    metafile: true,
    logLevel: 'warning',
  };
  // The extension and the server are CommonJS, because that is what the editor starts; `.cjs` says so in a package of
  // modules.
  const started = { ...common, format: 'cjs', outExtension: { '.js': '.cjs' } };
  return [
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
    { ...started, entryPoints: { extension: 'client/src/extension.ts' }, external: ['vscode'] },
    { ...started, entryPoints: { server: 'server/src/host/language-server-node.ts' } },
  ];
}
