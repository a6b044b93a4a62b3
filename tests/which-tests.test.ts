import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import manifest from '../package.json' with { type: 'json' };
import { long, needingPrograms } from './vitest.config.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const own = 'tests/which-tests.test.ts';
const files = readdirSync(`${root}tests`, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.ts'))
  .map((path) => `tests/${path.replaceAll('\\', '/')}`);
const textOf = (path: string): string => readFileSync(root + path, 'utf8');

describe('which tests run where', () => {
  test('nothing is skipped but by `describeWith`, so that its files are all that a bare machine leaves out', () => {
    const skipping = files.filter(
      (path) =>
        path !== own &&
        path !== 'tests/needs.ts' &&
        /\.(?:skip|skipIf|runIf|todo|only)\b|REQUIRE_ALL/.test(textOf(path)),
    );
    expect(skipping).toEqual([]);
    expect(needingPrograms()).toContain('tests/outside/ngspice.test.ts');
    expect(needingPrograms()).toContain('tests/neovim/neovim.test.ts');
    expect(needingPrograms()).not.toContain('tests/outside/filaments.test.ts');
  });

  test('what is long is there', () => {
    expect(long.filter((path) => !existsSync(root + path))).toEqual([]);
    expect(new Set(long).size).toBe(long.length);
  });

  test('the quick ones are those of the configuration', () => {
    expect(manifest.scripts['test:quick']).toMatch(/vitest run .*tests\/vitest\.config\.ts --mode quick$/);
    expect(manifest.scripts['test:programs']).toMatch(
      /vitest run .*tests\/vitest\.config\.ts --mode programs\b/,
    );
  });
});
