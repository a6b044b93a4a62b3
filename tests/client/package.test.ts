import { statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { listFiles, PackageManager } from '@vscode/vsce';
import { describe, expect, test } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };

const root = fileURLToPath(new URL('../..', import.meta.url));

/** What goes to the reader of the extension, and nothing else. */
const contents = [
  'CHANGELOG.md',
  'LICENSE',
  'README.md',
  'client/language-configuration.json',
  'client/media/file-dark.svg',
  'client/media/file-light.svg',
  'client/media/icon.png',
  'client/syntaxes/ohmwright-procedure.tmLanguage.json',
  'dist/extension.cjs',
  'dist/rules.md',
  'dist/server.cjs',
  'package.json',
  'procedures/driver-airbag-resistance.procedure.yaml',
  'procedures/interlock-open.procedure.yaml',
  'schemas/procedure.schema.json',
];

describe('the packed extension', () => {
  test('holds what it should, no more and no less', async () => {
    expect((await listFiles({ cwd: root, packageManager: PackageManager.None })).sort()).toEqual(contents);
  });

  test('is smaller than one megabyte', () => {
    const { size } = statSync(join(root, `dist/ohmwright-${manifest.version}.vsix`));
    expect(size).toBeLessThan(1_000_000);
    expect(size).toBeGreaterThan(100_000);
  });
});
