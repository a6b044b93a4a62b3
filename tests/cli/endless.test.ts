import { execFileSync, spawn, spawnSync } from 'node:child_process';
import { closeSync, openSync, symlinkSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { temporaryFolder } from '../host/temporary-folder.ts';
import { minimal, program, startSession } from '../protocol/stdio-client.ts';

/*
 * What never ends or waits for a writer, given to the built program: it answers. The guard is half a minute; each answer
 * takes less than a second on an idle machine.
 */

const guard = 30_000;
const using = (name: string): string => `format: 1\ntitle: A\nuses: [${name}]\n`;
const folder = temporaryFolder();

describe('the program answers', () => {
  beforeAll(() => {
    execFileSync('mkfifo', [folder.at('pipe'), folder.at('pipe.parts.yaml')]);
    symlinkSync('/dev/zero', folder.at('zero.parts.yaml'));
    symlinkSync('/dev/zero', folder.at('zero.procedure.yaml'));
    folder.write('pipe.procedure.yaml', using('pipe.parts.yaml'));
    folder.write('endless.procedure.yaml', using('zero.parts.yaml'));
  });

  function answer(words: readonly string[], input?: number) {
    const { status, stdout, stderr, error } = spawnSync(process.execPath, [program, ...words], {
      cwd: folder.path,
      encoding: 'utf8',
      timeout: guard,
      stdio: [input ?? 'ignore', 'pipe', 'pipe'],
    });
    expect(error).toBeUndefined();
    return { status, out: stdout, err: stderr };
  }

  test.each(['pipe', 'pipe.parts.yaml', '/dev/zero', 'zero.procedure.yaml'])('where %s is named', (path) => {
    const { status, err } = answer(['check', path]);
    expect(status).toBe(2);
    expect(err).toContain(`cannot read ${path}: it is a ${path.startsWith('pipe') ? 'pipe' : 'device'}`);
    if (path.startsWith('pipe')) expect(err).toContain('give its text to standard input');
  });

  test.each([
    ['pipe.procedure.yaml', 'it is a pipe'],
    ['endless.procedure.yaml', 'it is a link that leads out of the workspace'],
  ])('where %s uses one', (path, why) => {
    expect(answer(['check', path])).toMatchObject({
      status: 1,
      out: expect.stringContaining(`cannot be used: ${why}.`) as string,
    });
  });

  test('where standard input never ends', () => {
    const zero = openSync('/dev/zero', 'r');
    const { status, out } = answer(['check', '-', '--name', 'a.procedure.yaml'], zero);
    closeSync(zero);
    expect(status).toBe(1);
    expect(out).toContain('This file is larger than 1 MiB.');
  });

  test('where standard input comes late, with all of it', async () => {
    const slow = spawn('sh', ['-c', 'printf "format: 1\\n"; sleep 1; printf "title: Late\\n"'], {
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    const check = spawn(process.execPath, [program, 'check', '-', '--name', 'a.procedure.yaml'], {
      stdio: [slow.stdout, 'pipe', 'ignore'],
    });
    let out = '';
    for await (const chunk of check.stdout) out += String(chunk);
    expect(out).toContain('The file needs `steps`');
    expect(out).not.toContain('The file needs `title`');
  });

  test('in an editor', async () => {
    const session = await startSession(minimal);
    for (const [name, why] of [
      ['pipe', 'it is a pipe'],
      ['zero', 'it is a link that leads out of the workspace'],
    ] as const) {
      const uri = pathToFileURL(folder.at(`${name}-open.procedure.yaml`)).href;
      await session.open(uri, using(`${name}.parts.yaml`));
      const messages = (await session.findings(uri)).map(({ message }) => message);
      expect(messages).toContain(`\`${name}.parts.yaml\` cannot be used: ${why}.`);
    }
    expect(await session.end()).toBe(0);
  });
});
