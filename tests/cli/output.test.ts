import { spawnSync } from 'node:child_process';
import { openSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const program = fileURLToPath(new URL('../../dist/cli.js', import.meta.url));
const full = (): number => openSync('/dev/full', 'w');

describe('what cannot be delivered is no success', () => {
  test('a full disk behind standard output: status 2 and a line that says so', () => {
    const { status, stderr } = spawnSync(process.execPath, [program, 'schema'], {
      encoding: 'utf8',
      stdio: ['ignore', full(), 'pipe'],
    });
    expect([status, stderr]).toEqual([2, 'ohmwright: cannot write the output: the disk is full\n']);
  });

  test('a reader who leaves: the same', () => {
    const { stdout, stderr } = spawnSync(
      'sh',
      ['-c', '{ "$@"; echo "status $?" >&2; } | head -c 10', 'sh', process.execPath, program, 'schema'],
      { encoding: 'utf8' },
    );
    expect(stdout).toHaveLength(10);
    expect(stderr).toBe('ohmwright: cannot write the output: its reader has left\nstatus 2\n');
  });

  test('standard error that cannot be written either leaves the status', () => {
    for (const words of [['schema'], ['no-such-command']])
      expect(
        spawnSync(process.execPath, [program, ...words], { stdio: ['ignore', full(), full()] }).status,
      ).toBe(2);
  });
});
