import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { listFiles, PackageManager } from '@vscode/vsce';
import { describe, expect, test } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };

const root = fileURLToPath(new URL('../..', import.meta.url));

const procedures = readdirSync(join(root, 'procedures')).map((name) => `procedures/${name}`);

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
  ...procedures,
  'schemas/parts.schema.json',
  'schemas/procedure.schema.json',
];

describe('the packed extension', () => {
  test('holds what it should, no more and no less', async () => {
    expect((await listFiles({ cwd: root, packageManager: PackageManager.None })).sort()).toEqual(
      contents.toSorted(),
    );
  });

  test('is smaller than one megabyte', () => {
    const { size } = statSync(join(root, `dist/ohmwright-${manifest.version}.vsix`));
    expect(size).toBeLessThan(1_000_000);
    expect(size).toBeGreaterThan(100_000);
  });
});
