import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const bundle = fileURLToPath(new URL('../../dist/cli.js', import.meta.url));
const shipped = fileURLToPath(
  new URL('../fixtures/driver-airbag-written-out.procedure.yaml', import.meta.url),
);

describe('the bundled program', () => {
  test('is built', () => {
    expect(existsSync(bundle), 'dist/cli.js is missing: run `npm run build` first').toBe(true);
  });

  test('runs alone in an empty folder, with no dependency left outside', () => {
    const folder = mkdtempSync(join(tmpdir(), 'bundle-'));
    try {
      copyFileSync(bundle, join(folder, 'cli.mjs'));
      copyFileSync(shipped, join(folder, 'a.procedure.yaml'));
      const check = spawnSync(process.execPath, ['cli.mjs', 'check', '.'], {
        cwd: folder,
        encoding: 'utf8',
        env: { ...process.env, CI: 'true' },
      });
      expect([check.status, check.stdout, check.stderr]).toEqual([0, '1 file checked, no findings.\n', '']);
      const card = spawnSync(process.execPath, ['cli.mjs', 'card', 'a.procedure.yaml', '-o', 'card.html'], {
        cwd: folder,
        encoding: 'utf8',
      });
      expect([card.status, existsSync(join(folder, 'card.html'))]).toEqual([0, true]);
      writeFileSync(join(folder, 'b.procedure.yaml'), 'format: 1\n');
      const piped = spawnSync(process.execPath, ['cli.mjs', 'check', '.', '--format', 'json'], {
        cwd: folder,
        encoding: 'utf8',
      });
      expect(piped.status).toBe(1);
      expect(JSON.parse(piped.stdout)).toMatchObject({ document: 'check' });
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
