import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, renameSync, symlinkSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parse } from 'yaml';
import { beforeAll, describe, expect, test } from 'vitest';
import { endings } from '../../server/src/format/file-kinds.ts';
import { rules } from '../../server/src/rules/rules.ts';
import { temporaryFolder } from '../host/temporary-folder.ts';
import type { Log } from './sarif-log.ts';
import { ran } from './fake-terminal.ts';

/* What a folder holds is read, or it is said that it was not and why. */

const good = rules[0]?.examples.passes.text ?? '';
const broken = good.replace('format: 1', 'format: 2');
const isPosix = process.platform !== 'win32';
const folder = temporaryFolder();

/** As the program names what lies in the folder, which is not the one that the tests run in. */
const inFolder = (name: string): string => folder.at(name);

beforeAll(() => {
  folder.write('all/a.procedure.yaml', good);
  folder.write('all/b/c.procedure.yml', good);
  folder.write('all/Other.Procedure.YAML', broken);
  folder.write('all/.hidden.parts.json', broken);
  folder.write('all/.git/x.procedure.yaml', broken);
  folder.write('all/b/node_modules/x.procedure.yaml', broken);
  folder.write('all/readme.md', 'not: ours');
  symlinkSync('a.procedure.yaml', folder.at('all/link.procedure.yaml'));
  symlinkSync('..', folder.at('all/b/round'));
  symlinkSync('readme.md', folder.at('all/other-link.md'));
  if (isPosix) execFileSync('mkfifo', [folder.at('all/pipe.procedure.yaml')]);
});

const passed = [
  ['.git', 'hidden-folder'],
  ['.hidden.parts.json', 'hidden-file'],
  ['Other.Procedure.YAML', 'other-case'],
  ['b/node_modules', 'node-modules'],
  ['b/round', 'link'],
  ['link.procedure.yaml', 'link'],
  ...(isPosix ? [['pipe.procedure.yaml', 'no-file']] : []),
];

interface CheckJson {
  readonly files: readonly {
    readonly file: string;
    readonly findings: readonly { readonly rule: string }[];
  }[];
  readonly 'passed-over': readonly {
    readonly file: string;
    readonly why: string;
    readonly problem: string | null;
  }[];
}

function checked(...paths: readonly string[]): CheckJson {
  return JSON.parse(ran(['check', ...paths, '--format', 'json']).out) as CheckJson;
}

describe('what a walk through folders passes over', () => {
  test('is listed in JSON, each with the reason', () => {
    const { files, 'passed-over': passedOver } = checked(folder.at('all'));
    expect(files.map(({ file }) => file)).toEqual(
      ['all/a.procedure.yaml', 'all/b/c.procedure.yml'].map(inFolder),
    );
    expect(passedOver).toEqual(
      passed.map(([file, why]) => ({ file: inFolder(`all/${file ?? ''}`), why, problem: null })),
    );
  });

  test('is counted for people, and changes no status', () => {
    const { out, exit } = ran(['check', folder.at('all')]);
    expect(exit).toBe(0);
    const [line = ''] = out.split('\n').filter((one) => one.startsWith('Passed over: '));
    expect(line).toContain(`1 name in another case (${inFolder('all/Other.Procedure.YAML')})`);
    expect(line).toContain(`2 links (${inFolder('all/b/round')}, ${inFolder('all/link.procedure.yaml')})`);
    expect(line).toContain(`1 hidden folder (${inFolder('all/.git')})`);
    expect(line).toContain(`1 hidden file (${inFolder('all/.hidden.parts.json')})`);
  });

  test('is noted in SARIF, and the run counts as successful', () => {
    const log = JSON.parse(ran(['check', folder.at('all'), '--format', 'sarif']).out) as Log;
    const [{ executionSuccessful, toolExecutionNotifications = [] }] = log.runs[0].invocations;
    expect(executionSuccessful).toBe(true);
    expect(toolExecutionNotifications.every(({ level }) => level === 'note')).toBe(true);
    const said = toolExecutionNotifications.map(({ message }) => message.text).join('\n');
    for (const [file = ''] of passed) expect(said).toContain(inFolder(`all/${file}`));
  });

  test('is read where it is named itself', () => {
    for (const name of ['Other.Procedure.YAML', '.hidden.parts.json', '.git/x.procedure.yaml'])
      expect(checked(folder.at(`all/${name}`)).files[0]?.findings[0]?.rule).toBe('file');
    expect(checked(folder.at('all/.git')).files).toHaveLength(1);
    expect(ran(['check', folder.at('all/link.procedure.yaml')]).exit).toBe(0);
  });

  test('is said where nothing else was found', () => {
    folder.write('only/X.PARTS.YAML', good);
    const { exit, out, err } = ran(['check', folder.at('only')]);
    expect([exit, out]).toEqual([2, '']);
    expect(err).toContain(
      `no procedure or parts file below ${folder.at('only')}; passed over: 1 name in another case`,
    );
  });

  test('is not said where nothing was', () => {
    expect(ran(['check', folder.at('all/a.procedure.yaml')]).out).toBe('1 file checked, no findings.\n');
    expect(checked(folder.at('all/a.procedure.yaml'))['passed-over']).toEqual([]);
  });
});

describe('what cannot be read', () => {
  // The longest path that the system takes (PATH_MAX): 4096 bytes on Linux, 1024 on macOS. Two folders of more than half
  // of it, one put below the other, make one that nobody can list, whoever runs the test.
  const steps = Math.ceil(((process.platform === 'darwin' ? 1024 : 4096) * 0.55) / 201);
  const half = Array.from({ length: steps }, () => 'd'.repeat(200)).join('/');

  test('loses nothing else: neither a folder nor a file', () => {
    folder.write('deep/a.procedure.yaml', broken);
    folder.write('deep/z.procedure.yaml', good);
    mkdirSync(folder.at(`deep/${half}`), { recursive: true });
    mkdirSync(folder.at(`lower/${half}`), { recursive: true });
    renameSync(folder.at('lower'), folder.at(`deep/${half}/lower`));
    try {
      const { exit, err, out } = ran(['check', folder.at('deep'), folder.at('none'), '--format', 'json']);
      expect(exit).toBe(2);
      expect(err.trim().split('\n')).toEqual([
        expect.stringMatching(/^ohmwright: cannot read .*\/d{200}: its name is too long$/),
        `ohmwright: cannot read ${folder.at('none')}: there is no such file`,
      ]);
      const document = JSON.parse(out) as CheckJson;
      expect(document.files.map(({ findings }) => findings.length)).toEqual([1, 0]);
      expect(document['passed-over'].map(({ why, problem }) => [why, problem])).toEqual([
        ['unreadable', 'its name is too long'],
        ['unreadable', 'there is no such file'],
      ]);
      const log = JSON.parse(ran(['check', folder.at('deep'), '--format', 'sarif']).out) as Log;
      const [{ executionSuccessful, toolExecutionNotifications = [] }] = log.runs[0].invocations;
      expect(executionSuccessful).toBe(false);
      expect(toolExecutionNotifications.map(({ level }) => level)).toEqual(['error']);
    } finally {
      renameSync(folder.at(`deep/${half}/lower`), folder.at('lower'));
    }
  });
});

describe('one file is checked once', () => {
  test('however it is named', () => {
    const path = folder.at('all/a.procedure.yaml');
    const spelled = [
      path,
      folder.at('all/./b/../a.procedure.yaml'),
      `${folder.path}//all///a.procedure.yaml`,
    ];
    expect(checked(...spelled, folder.at('all/link.procedure.yaml')).files).toHaveLength(1);
  });

  test('relative and from the root, and is named from the folder that the program runs in', () => {
    const name = 'tests/fixtures/driver-airbag-written-out.procedure.yaml';
    const absolute = fileURLToPath(new URL(`../../${name}`, import.meta.url));
    const spelled = [`./${name}`, absolute, name, `tests/../${name}`, 'tests//fixtures'];
    expect(checked(...spelled).files.map(({ file }) => file)).toEqual([name]);
  });
});

describe('every ending', () => {
  const shipped = readFileSync(
    fileURLToPath(new URL('../fixtures/driver-airbag-written-out.procedure.yaml', import.meta.url)),
    'utf8',
  );
  const connectors = /\nconnectors:\n(?: .*\n|#.*\n)+/.exec(shipped)?.[0] ?? '';

  test.each(endings.procedure.flatMap((one) => endings.parts.map((other) => [one, other] as const)))(
    'a%s that uses k%s, in a folder and by its name',
    (ofProcedure, ofParts) => {
      const at = `kinds${ofProcedure}${ofParts}`;
      const written = (name: string, yaml: string): string =>
        name.endsWith('.json') ? JSON.stringify(parse(yaml), null, '\t') : yaml;
      const procedure = written(ofProcedure, shipped.replace(connectors, `\nuses: [k${ofParts}]\n`));
      folder.write(`${at}/a${ofProcedure}`, procedure);
      expect(checked(folder.at(at)).files[0]?.findings.map(({ rule }) => rule)).toEqual(['parts-file']);
      folder.write(`${at}/k${ofParts}`, written(ofParts, `format: 1\n${connectors}`));
      expect(checked(folder.at(at)).files.map(({ findings }) => findings)).toEqual([[], []]);
      expect(ran(['check', '-', '--name', folder.at(`${at}/b${ofProcedure}`)], procedure).exit).toBe(0);
      expect(ran(['windows', folder.at(`${at}/a${ofProcedure}`)]).exit).toBe(0);
    },
  );
});

test('a file whose name says nothing is read as a procedure, and that is said', () => {
  folder.write('notes.txt', 'Ask the workshop lead.\n');
  const { exit, out } = ran(['check', folder.at('notes.txt')]);
  expect(exit).toBe(1);
  expect(out).toContain('A procedure starts with `format: 1`');
  expect(out).toContain(
    `Read as a procedure, for the name does not say what it is: ${inFolder('notes.txt')}.`,
  );
});
