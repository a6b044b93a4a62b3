import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import { listFiles, PackageManager } from '@vscode/vsce';
import { beforeAll, describe, expect, test } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };

const root = fileURLToPath(new URL('../..', import.meta.url));
const textOf = (path: string): string => readFileSync(join(root, path), 'utf8');

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
  'dist/THIRD-PARTY-NOTICES.txt',
  'dist/extension.cjs',
  'dist/rules.md',
  'dist/server.cjs',
  'package.json',
  ...procedures,
  'schemas/parts.schema.json',
  'schemas/procedure.schema.json',
];

/** What `npm pack` would pack, as it says itself. */
function listedByNpm(): readonly string[] {
  const words = ['pack', '--dry-run', '--json', '--ignore-scripts'];
  const { stdout } = spawnSync('npm', words, { cwd: root, encoding: 'utf8' });
  const [packed] = JSON.parse(stdout) as readonly { readonly files: readonly { readonly path: string }[] }[];
  return packed?.files.map(({ path }) => path) ?? [];
}

describe.each([
  ['extension', contents, () => listFiles({ cwd: root, packageManager: PackageManager.None })],
  // The command line as well: a package holds what its `bin` names.
  ['npm package', [...contents, 'dist/cli.js'], () => Promise.resolve(listedByNpm())],
])('the packed %s', (_name, expected, list) => {
  let packed: readonly string[] = [];
  beforeAll(async () => {
    packed = await list();
  });

  test('holds what it should, no more and no less', () => {
    expect(packed.toSorted()).toEqual(expected.toSorted());
  });

  test.each(['README.md', 'CHANGELOG.md'])('holds all that %s links to', (file) => {
    const links = Array.from(textOf(file).matchAll(/\]\(([^)#\s]+)/g), ([, target = '']) => target);
    const relative = links.filter((target) => !/^[a-z]+:/i.test(target));
    const missing = relative.filter((target) => {
      const path = posix.normalize(target);
      return !packed.some((one) => one === path || (path.endsWith('/') && one.startsWith(path)));
    });
    expect(missing).toEqual([]);
  });
});

test('the packed extension is smaller than one megabyte', () => {
  const { size } = statSync(join(root, `dist/ohmwright-${manifest.version}.vsix`));
  expect(size).toBeLessThan(1_000_000);
  expect(size).toBeGreaterThan(100_000);
});

interface Metafile {
  readonly outputs: Readonly<
    Record<
      string,
      {
        readonly bytes: number;
        readonly inputs: Readonly<Record<string, { readonly bytesInOutput: number }>>;
      }
    >
  >;
}

describe('the licences of what is bundled', () => {
  const outputs = (JSON.parse(textOf('dist/metafiles.json')) as readonly Metafile[]).flatMap(({ outputs }) =>
    Object.entries(outputs),
  );
  const notices = textOf('dist/THIRD-PARTY-NOTICES.txt');
  const sections = new Map(
    notices
      .split(`\n\n${'='.repeat(80)}\n\n`)
      .slice(1)
      .map((section) => [section.split('\n', 1)[0], section]),
  );

  /** The folders of all packages that a byte of a bundle comes from. */
  const folders = new Set(
    outputs.flatMap(([, { inputs }]) =>
      Object.entries(inputs).flatMap(([path, { bytesInOutput }]) => {
        const parts = path.split('/');
        const at = parts.lastIndexOf('node_modules');
        if (at === -1 || bytesInOutput === 0) return [];
        return [parts.slice(0, at + (parts[at + 1]?.startsWith('@') === true ? 3 : 2)).join('/')];
      }),
    ),
  );

  test('are looked for in the bundles that are packed', () => {
    const sizes = outputs.map(([path, { bytes }]) => [path, bytes]);
    const packed = ['dist/cli.js', 'dist/extension.cjs', 'dist/server.cjs'];
    expect(sizes.toSorted()).toEqual(packed.map((path) => [path, statSync(join(root, path)).size]));
    expect(folders.size).toBeGreaterThan(8);
  });

  test('are all there, each with name, version and text, and no others', () => {
    const titles = [...folders].map((folder) => {
      const { name, version } = JSON.parse(textOf(`${folder}/package.json`)) as Readonly<
        Record<'name' | 'version', string>
      >;
      const file = readdirSync(join(root, folder)).find((one) => /^licen[cs]e/i.test(one)) ?? '';
      const licence = textOf(`${folder}/${file}`).replaceAll('\r\n', '\n').trim();
      expect(licence).toMatch(/Permission|Redistribution|License/);
      expect(sections.get(`${name} ${version}`)).toContain(licence);
      return `${name} ${version}`;
    });
    expect([...sections.keys()]).toEqual(titles.toSorted());
  });

  test('let it be passed on as it is', () => {
    const licences = Array.from(sections.values(), (section) => section.split('\n')[1]);
    const permissive = ['MIT', 'ISC', 'BSD-3-Clause', 'BlueOak-1.0.0', 'Apache-2.0'];
    expect(licences.filter((one) => !permissive.includes(one ?? ''))).toEqual([]);
  });
});
