// Builds dist/: the bundles, the licences of what is in them, and the page of rules that findings link to.
import { rm, writeFile } from 'node:fs/promises';
import { build } from 'esbuild';
import { bundles, root } from './bundles.mjs';
import { noticesOf } from './notices.mjs';

await rm(new URL('../../dist/', import.meta.url), { recursive: true, force: true });

const built = await Promise.all(
  bundles(process.argv.includes('--sourcemap')).map((options) => build(options)),
);
const metafiles = built.map(({ metafile }) => metafile);
await writeFile(new URL('../../dist/THIRD-PARTY-NOTICES.txt', import.meta.url), await noticesOf(metafiles));
// What came from where, for the tests.
await writeFile(new URL('../../dist/metafiles.json', import.meta.url), JSON.stringify(metafiles));

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
