import { execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { closeSync, constants, existsSync, mkdirSync, openSync, symlinkSync } from 'node:fs';
import { createServer } from 'node:net';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { filesBelow, filesByUri } from '../../server/src/host/file-systems.ts';
import { readOpen, readTextFile } from '../../server/src/host/files.ts';
import { fileId } from '../../server/src/project/file-names.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import type { Files } from '../../server/src/project/snapshot.ts';
import { largestFile } from '../../server/src/text/problems/file.ts';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { temporaryFolder } from './temporary-folder.ts';

/* What is read from a disk: regular files, as much as one can hold, and through links that stay in the workspace. */

const parts = 'format: 1\n';
const outside = temporaryFolder();
const folder = temporaryFolder();
const isPosix = process.platform !== 'win32';
const socket = createServer();

beforeAll(async () => {
  outside.write('k.parts.yaml', parts);
  folder.write('in/k.parts.yaml', parts);
  folder.write('in/deep/m.parts.yaml', parts);
  mkdirSync(folder.at('folder.parts.yaml'));
  symlinkSync(folder.at('in/k.parts.yaml'), folder.at('link.parts.yaml'));
  symlinkSync('in', folder.at('in2'));
  symlinkSync(outside.at('k.parts.yaml'), folder.at('out.parts.yaml'));
  symlinkSync(outside.path, folder.at('out'));
  symlinkSync('round.parts.yaml', folder.at('round.parts.yaml'));
  symlinkSync('nowhere', folder.at('dangling.parts.yaml'));
  if (!isPosix) return;
  symlinkSync('/dev/zero', folder.at('endless.parts.yaml'));
  execFileSync('mkfifo', [folder.at('pipe.parts.yaml')]);
  await new Promise<void>((resolve) => {
    socket.listen(folder.at('socket.parts.yaml'), resolve);
  });
});
afterAll(() => {
  socket.close();
});

describe('a file', () => {
  test('that is none says what it is, and is not opened', () => {
    expect(readTextFile(folder.path)).toEqual({ problem: 'it is a folder' });
    expect(readTextFile(folder.at('none'))).toBeNull();
    expect(readTextFile(folder.at('in/k.parts.yaml/x'))).toBeNull();
    expect(readTextFile(folder.at('round.parts.yaml'))).toEqual({ problem: 'its links lead in a circle' });
    expect(readTextFile(folder.at('x'.repeat(5000)))).toEqual({ problem: 'its name is too long' });
    if (!isPosix) return;
    expect(readTextFile(folder.at('pipe.parts.yaml'))).toEqual({ problem: 'it is a pipe' });
    expect(readTextFile(folder.at('socket.parts.yaml'))).toEqual({ problem: 'it is a socket' });
    expect(readTextFile('/dev/zero')).toEqual({ problem: 'it is a device' });
  });

  test('that is open and has nothing yet is waited for', async () => {
    const path = folder.at('late');
    execFileSync('mkfifo', [path]);
    const descriptor = openSync(path, constants.O_RDONLY | constants.O_NONBLOCK);
    const writer = spawn('sh', ['-c', 'exec 3>"$1"; echo ready; sleep 1; printf late >&3', 'sh', path], {
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    await once(writer.stdout, 'data');
    expect(readOpen(descriptor)).toEqual({ text: 'late' });
    closeSync(descriptor);
  });

  test('is read as it is, up to the size at which it is refused', () => {
    // Three bytes each in UTF-8, the most that one UTF-16 unit can have.
    const fits = '€'.repeat(largestFile);
    expect(readTextFile(folder.write('fits', fits))).toEqual({ text: fits });
    const read = readTextFile(folder.write('large', 'x'.repeat(20 * largestFile)));
    const text = read !== null && 'text' in read ? read.text : '';
    expect(text.length).toBeGreaterThan(largestFile);
    expect(text.length).toBeLessThan(4 * largestFile);
  });
});

/** What a procedure in the folder makes of a name, by paths and by URIs. */
const ways: readonly (readonly [string, (name: string, from?: string) => unknown])[] = [
  [
    'on the command line',
    (name, from = 'a.procedure.yaml') => found(filesBelow(folder.path), '', from, name),
  ],
  [
    'in an editor',
    (name, from = 'a.procedure.yaml') => found(filesByUri, uriOf(folder.path), uriOf(folder.at(from)), name),
  ],
];

function uriOf(path: string): string {
  return fileId(pathToFileURL(path).href);
}

function found(files: Files, root: string, from: string, name: string): unknown {
  const file = snapshotOf([], { folders: [root], ...files }).find(from, name);
  if ('problem' in file) return file.problem;
  expect(file.text).toBe(parts);
  return file.id.replace(`${uriOf(folder.path)}/`, '');
}

describe.each(ways)('a name in `uses` %s', (_, find) => {
  test('leads through links that stay in the workspace, and then is the file that they lead to', () => {
    expect(find('in/k.parts.yaml')).toBe('in/k.parts.yaml');
    expect(find('link.parts.yaml')).toBe('in/k.parts.yaml');
    expect(find('in2/k.parts.yaml')).toBe('in/k.parts.yaml');
    expect(find('./in2//deep/../k.parts.yaml')).toBe('in/k.parts.yaml');
  });

  test('does not lead out of the workspace, by no link', () => {
    const leadsOut = expect.stringContaining(
      'cannot be used: it is a link that leads out of the workspace.',
    ) as string;
    expect(find('out.parts.yaml')).toEqual(leadsOut);
    expect(find('out/k.parts.yaml')).toEqual(leadsOut);
    expect(find('in2/../out/k.parts.yaml')).toEqual(leadsOut);
    if (isPosix) expect(find('endless.parts.yaml')).toEqual(leadsOut);
  });

  test('that leads to no file says so', () => {
    expect(find('none.parts.yaml')).toBe('There is no file `none.parts.yaml`.');
    expect(find('dangling.parts.yaml')).toBe('There is no file `dangling.parts.yaml`.');
    expect(find('folder.parts.yaml')).toBe('`folder.parts.yaml` cannot be used: it is a folder.');
    expect(find('round.parts.yaml')).toBe('`round.parts.yaml` cannot be used: its links lead in a circle.');
    if (isPosix) expect(find('pipe.parts.yaml')).toBe('`pipe.parts.yaml` cannot be used: it is a pipe.');
  });
});

describe('the folder itself', () => {
  test('may be reached by a link: what lies in it is inside', () => {
    symlinkSync(folder.path, outside.at('alias'));
    const alias = outside.at('alias');
    const files = filesBelow(alias);
    expect(snapshotOf([], { folders: [''], ...files }).find('a.procedure.yaml', 'link.parts.yaml')).toEqual({
      id: 'in/k.parts.yaml',
      text: parts,
    });
    expect(files.idOf(folder.at('in/k.parts.yaml'))).toBe('in/k.parts.yaml');
  });
});

test('a file is named from the folder that the program runs in, else from the root', () => {
  const { idOf } = filesBelow(folder.path);
  const inside = [
    'in/k.parts.yaml',
    './in//k.parts.yaml',
    folder.at('in/k.parts.yaml'),
    'in/../in/k.parts.yaml',
  ];
  expect([...new Set(inside.map(idOf))]).toEqual(['in/k.parts.yaml']);
  expect(idOf(outside.at('k.parts.yaml'))).toBe(fileId(outside.at('k.parts.yaml')));
  expect(existsSync(idOf(outside.at('k.parts.yaml')))).toBe(true);
});

test('two names of one file in `uses` are one file: nothing is defined twice', () => {
  const connectors = `${parts}connectors: { K1: { contact: 5 mΩ } }\n`;
  folder.write('two/k.parts.yaml', connectors);
  symlinkSync('k.parts.yaml', folder.at('two/l.parts.yaml'));
  const text = 'format: 1\ntitle: A\nuses: [k.parts.yaml, ./l.parts.yaml, .//k.parts.yaml]\n';
  const snapshot = snapshotOf([], { folders: [''], ...filesBelow(folder.path) });
  const read = readProcedure({ id: 'two/a.procedure.yaml', text }, snapshot.find);
  expect(read.used.map(({ file }) => file.id)).toEqual(['two/k.parts.yaml']);
  expect(read.findings.map(({ rule }) => rule)).not.toContain('parts-file');
});
