import { spawnSync } from 'node:child_process';
import type { SpawnSyncReturns } from 'node:child_process';
import {
  chmodSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { writeTextFile } from '../../server/src/host/write-file.ts';

let folder = '';
let card = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'written-'));
  card = join(folder, 'card.html');
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const program = fileURLToPath(new URL('../../dist/cli.js', import.meta.url));
const procedure = fileURLToPath(new URL('../../procedures/coolant-sensor.procedure.yaml', import.meta.url));

describe('a file is written', () => {
  test('new, with nothing left beside it', () => {
    expect(writeTextFile(card, 'Ω')).toBeNull();
    expect([readFileSync(card, 'utf8'), readdirSync(folder)]).toEqual(['Ω', ['card.html']]);
  });

  test('in the place of an earlier one, whose permissions it takes over', () => {
    for (const mode of [0o640, 0o600, 0o664]) {
      writeFileSync(card, 'earlier');
      chmodSync(card, mode);
      expect(writeTextFile(card, 'later')).toBeNull();
      expect([readFileSync(card, 'utf8'), statSync(card).mode & 0o777]).toEqual(['later', mode]);
    }
  });

  test('through links, which stay: to a file, to nothing yet, by way of a folder that is a link', () => {
    mkdirSync(join(folder, 'far/away'), { recursive: true });
    symlinkSync('far/away', join(folder, 'near'));
    symlinkSync('../there.html', join(folder, 'far/away/second.html'));
    symlinkSync('near/second.html', card);
    for (const text of ['first', 'second']) {
      expect(writeTextFile(card, text)).toBeNull();
      expect(readFileSync(join(folder, 'far/there.html'), 'utf8')).toBe(text);
      expect(readlinkSync(card)).toBe('near/second.html');
    }
    expect(readdirSync(join(folder, 'far')).sort()).toEqual(['away', 'there.html']);
  });

  test('under the longest name that there can be', () => {
    const long = join(folder, `${'n'.repeat(250)}.html`);
    expect([writeTextFile(long, 'x'), readFileSync(long, 'utf8')]).toEqual([null, 'x']);
  });
});

describe('a file that cannot be written says why in words, and nothing is left', () => {
  test.each([
    [
      'a folder',
      'it is a folder',
      () => {
        mkdirSync(card);
      },
    ],
    ['in no folder', 'there is no such folder', () => (card = join(folder, 'none/card.html'))],
    ['below a file', 'there is no such folder', () => (card = join(program, 'card.html'))],
    [
      'a link to itself',
      'its links lead in a circle',
      () => {
        symlinkSync('card.html', card);
      },
    ],
    [
      'a device',
      'it is no regular file',
      () => {
        symlinkSync('/dev/full', card);
      },
    ],
    ['a pipe', 'it is no regular file', () => spawnSync('mkfifo', [card])],
    ['a name that is too long', 'its name is too long', () => (card = join(folder, 'n'.repeat(300)))],
  ])('%s', (_what, why, make) => {
    make();
    const before = readdirSync(folder);
    expect(writeTextFile(card, 'x')).toBe(why);
    expect(readdirSync(folder)).toEqual(before);
  });

  test('where the folder or the earlier file may not be written', () => {
    const desk = join(folder, 'desk');
    const there = join(desk, 'card.html');
    mkdirSync(desk);
    writeFileSync(there, 'earlier');
    for (const [ofFolder, ofFile] of [
      [0o555, 0o444],
      [0o777, 0o444],
      [0o555, 0o666],
    ] as const) {
      const { status, stderr } = asNobody(ofFolder, ofFile, there);
      expect([status, stderr]).toEqual([
        2,
        `ohmwright: cannot write ${there}: nothing may be written there\n`,
      ]);
      expect([readFileSync(there, 'utf8'), readdirSync(desk)]).toEqual(['earlier', ['card.html']]);
    }
    expect(asNobody(0o777, 0o666, there)).toMatchObject({ status: 0, stderr: '' });
    expect(readFileSync(there, 'utf8')).toContain('<html');
  });
});

/** Runs the program for somebody whom folder and file do not belong to: root may do anything. */
function asNobody(ofFolder: number, ofFile: number, path: string): SpawnSyncReturns<string> {
  chmodSync(folder, 0o755);
  chmodSync(dirname(path), ofFolder);
  chmodSync(path, ofFile);
  // Nobody may read where the project lies.
  copyFileSync(program, join(folder, 'cli.mjs'));
  const isRoot = process.getuid?.() === 0;
  return spawnSync(process.execPath, ['cli.mjs', 'card', '-', '--name', 'a.procedure.yaml', '-o', path], {
    cwd: folder,
    encoding: 'utf8',
    input: readFileSync(procedure),
    ...(isRoot ? { uid: 65_534, gid: 65_534 } : {}),
  });
}

describe('an earlier card stays as it is, to the last byte', () => {
  const earlier = 'the earlier card\n'.repeat(5000);
  const words = [program, 'card', procedure, '--date', '2026-01-31', '-o'];

  test('where no more than a part of the new one can be written', () => {
    writeFileSync(card, earlier);
    // A limit on the size of files stands for a full disk: the write ends in the middle. In blocks of 512 or 1024 bytes.
    const limited = `ulimit -f 8 && exec "$@"`;
    const { status, stderr } = spawnSync('sh', ['-c', limited, 'sh', process.execPath, ...words, card], {
      encoding: 'utf8',
    });
    expect([status, stderr]).toEqual([
      2,
      `ohmwright: cannot write ${card}: it is larger than a file may be there\n`,
    ]);
    expect(readFileSync(card, 'utf8')).toBe(earlier);
    expect(readdirSync(folder)).toEqual(['card.html']);
  });

  test('where the program is killed at any of its calls; the next one clears up', () => {
    const run = (at: number): { readonly signal: string | null; readonly stderr: string } =>
      spawnSync(process.execPath, ['--import', killer, ...words, card], {
        encoding: 'utf8',
        env: { ...process.env, KILL_AT_CALL: String(at) },
      });
    writeFileSync(card, earlier);
    const calls = Number(/^calls: (\d+)$/m.exec(run(0).stderr)?.[1]);
    const whole = readFileSync(card, 'utf8');
    expect(whole).toMatch(/<\/html>\n$/);
    expect(calls).toBeGreaterThanOrEqual(6);
    let leftOver = 0;
    for (let at = 1; at <= calls; at += 1) {
      writeFileSync(card, earlier);
      expect(run(at).signal).toBe('SIGKILL');
      expect(readFileSync(card, 'utf8')).toBe(earlier);
      if (readdirSync(folder).length > 1) leftOver += 1;
      expect(writeTextFile(card, whole)).toBeNull();
      expect(readdirSync(folder)).toEqual(['card.html']);
    }
    expect(leftOver).toBeGreaterThan(2);
  });

  test('where another process is still writing, whose part is left alone', () => {
    const part = join(folder, `.ohmwright-${process.ppid}.part`);
    writeFileSync(part, 'half');
    expect(writeTextFile(card, 'x')).toBeNull();
    expect(existsSync(part)).toBe(true);
  });
});

const killer = new URL('kill-at-call.mjs', import.meta.url).href;
