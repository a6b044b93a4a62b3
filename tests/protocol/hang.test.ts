import type { ChildProcess } from 'node:child_process';
import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { introduced, rawClient } from './raw-client.ts';

/* A server that hangs ends all the same when its client is gone, and some time after it has stopped to answer. */

let folder = '';
const processes: ChildProcess[] = [];
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'ohmwright-'));
});
afterEach(() => {
  for (const one of processes.splice(0)) one.kill('SIGKILL');
  rmSync(folder, { recursive: true });
});

const here = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};

test('ends when the process of its client ends, while it computes without end', async () => {
  const hang = `process.on('SIGUSR2', () => { require('fs').writeSync(2, 'now it hangs'); for (;;); });`;
  const editor = spawn(process.execPath, ['-e', 'setInterval(() => {}, 1000)']);
  const client = rawClient({ node: ['--require', here('hang.cjs', hang)] });
  processes.push(editor, client.server);
  await introduced(client, {}, editor.pid ?? null);
  client.server.kill('SIGUSR2');
  while (!client.complaints().includes('now it hangs'))
    await new Promise((resolve) => setTimeout(resolve, 20));
  editor.kill('SIGKILL');
  expect(await client.ended()).toBe('SIGKILL');
  expect(client.complaints()).toContain('The client is gone.');
});

/** Runs a main thread that has a watchdog. */
async function run(main: string): Promise<{ readonly ended: unknown; readonly said: string }> {
  const outfile = join(folder, 'main.cjs');
  const host = fileURLToPath(new URL('../../server/src/host/', import.meta.url));
  await build({
    stdin: { contents: `import { watchdog } from './watchdog.ts'; ${main}`, resolveDir: host, loader: 'ts' },
    bundle: true,
    platform: 'node',
    format: 'cjs',
    outfile,
  });
  const { status, signal, stderr } = spawnSync(process.execPath, [outfile], {
    encoding: 'utf8',
    timeout: 60_000,
  });
  return { ended: signal ?? status, said: stderr };
}

test('ends when it has not answered for some time, with its client still there', async () => {
  const { ended, said } = await run('watchdog({ alone: 5, busy: 2 }).watch(process.ppid); for (;;);');
  expect([ended, said]).toEqual([
    'SIGKILL',
    'ohmwright: The server has not answered for 2 seconds. The server ends.\n',
  ]);
});

test('goes on while it computes with pauses, however long', async () => {
  const main = `
    watchdog({ alone: 2, busy: 3 }).watch(process.ppid);
    const from = performance.now();
    const slice = () => {
      const begun = performance.now();
      while (performance.now() < begun + 50);
      if (performance.now() > from + 6000) process.exit(0);
      setImmediate(slice);
    };
    slice();`;
  expect(await run(main)).toEqual({ ended: 0, said: '' });
});
