import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';

/* The fuzzer as it is run by hand, with few inputs of each kind: `OHMWRIGHT_FUZZ=10000 npm run fuzz` tries more. */

function fuzz(
  count: number,
  ...words: readonly string[]
): { readonly status: number | null; readonly out: string } {
  const { status, stdout } = spawnSync(process.execPath, ['server/build/fuzz.mjs', ...words], {
    encoding: 'utf8',
    env: { ...process.env, OHMWRIGHT_FUZZ: String(count) },
  });
  return { status, out: stdout };
}

test.for(['text', 'structure', 'same', 'edits', 'protocol', 'large'])(
  'random inputs are answered, and well: %s',
  (kind) => {
    const { status, out } = fuzz(150, kind);
    console.log(out.trimEnd());
    expect(status, out).toBe(0);
  },
);

test('the fuzzer finds the faults that are planted for it', () => {
  const { status, out } = fuzz(150, 'planted');
  expect(status, out).toBe(1);
});
