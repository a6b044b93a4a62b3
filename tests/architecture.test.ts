import { readFileSync, readdirSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import * as messages from '../server/src/protocol/messages.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const source = join(root, 'server/src');

/** Each folder imports only from itself and from those before it. */
const layers = [
  'quantity',
  'format',
  'model',
  'paths',
  'text',
  'circuit',
  'bench',
  'readings',
  'rules',
  'card',
  'project',
  'fixes',
  'editor',
  'protocol',
  'host',
  'cli',
];

interface Import {
  readonly file: string;
  readonly from: string;
  readonly module: string;
  /** Nothing of it is loaded. */
  readonly typeOnly: boolean;
}

function filesBelow(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => join(entry.parentPath, entry.name));
}

const files = filesBelow(source);

const imports: readonly Import[] = files.flatMap((path) => {
  const file = relative(source, path).split(sep).join('/');
  const text = readFileSync(path, 'utf8');
  const modules = [
    ...text.matchAll(
      /^(?:import|export)\b[^'"`;]*?from\s+'([^']+)'|^import\s+'([^']+)'|\bimport\('([^']+)'\)/gm,
    ),
  ];
  return modules.map((match) => ({
    file,
    from: layerOf(file),
    module: match[1] ?? match[2] ?? match[3] ?? '',
    typeOnly: /^(?:import|export) type\b/.test(match[0]),
  }));
});

function layerOf(file: string): string {
  return file.split('/')[0] ?? '';
}

/** The file that a relative import means, from the source folder; a file outside of it begins with `..`. */
function target({ file, module }: Import): string {
  return relative(source, join(source, dirname(file), module))
    .split(sep)
    .join('/');
}

/** What the extension imports of the server: the names, and the file of the server that they come from. */
const ofServer = filesBelow(join(root, 'client/src')).flatMap((path) =>
  [
    ...readFileSync(path, 'utf8').matchAll(
      /^(?:import|export)\b([^'"`;]*?)\bfrom\s+'([^']+)'|^import\s+'([^']+)'|\bimport\('([^']+)'\)/gm,
    ),
  ]
    .map((match) => ({
      names: [...(match[1] ?? '').matchAll(/\b(?!type\b)\w+/g)].map(([name]) => name),
      file: relative(source, join(dirname(path), match[2] ?? match[3] ?? match[4] ?? ''))
        .split(sep)
        .join('/'),
    }))
    .filter(({ file }) => !file.startsWith('..')),
);

const own = imports.filter(({ module }) => module.startsWith('.'));
const foreign = imports.filter(({ module }) => !module.startsWith('.'));
const said = ({ file, module }: Import): string => `${file} imports ${module}`;

describe('the house', () => {
  test('has only the rooms that are listed, and every import was seen', () => {
    expect(
      [...new Set(files.map((path) => layerOf(relative(source, path).split(sep).join('/'))))].sort(),
    ).toEqual([...layers].sort());
    expect(imports.length).toBeGreaterThan(files.length);
  });

  test('every folder imports only from folders above it', () => {
    const upward = own.filter((one) => {
      const to = layers.indexOf(layerOf(target(one)));
      return to !== -1 && to > layers.indexOf(one.from);
    });
    expect(upward.map(said)).toEqual([]);
  });

  test('what reckons with benches and circuits knows nothing of texts', () => {
    const rooms = ['model', 'paths', 'circuit', 'bench', 'readings', 'card'];
    const reading = own.filter((one) => rooms.includes(one.from) && layerOf(target(one)) === 'text');
    expect(reading.map(said)).toEqual([]);
  });

  test('what is known of a file comes through the one door: nobody else works it out again', () => {
    const makers =
      /\b(?:circuitsOf|clustersOf|stepGraph|explorerOf|computeReadings|sharedWatchers|whatIsLeft|printedProofs|owedAfterSteps|joinedToProofs)\(/;
    const below = layers.slice(layers.indexOf('rules'));
    const again = files
      .map((path) => relative(source, path).split(sep).join('/'))
      .filter((file) => below.includes(layerOf(file)) && file !== 'project/analysis.ts')
      .filter((file) => makers.test(readFileSync(join(source, file), 'utf8')));
    expect(again).toEqual([]);
  });

  test('circuit imports only quantity', () => {
    const strange = own.filter(
      (one) => one.from === 'circuit' && !['circuit', 'quantity'].includes(layerOf(target(one))),
    );
    expect(strange.map(said)).toEqual([]);
  });

  test('only text imports yaml', () => {
    expect(foreign.filter(({ from, module }) => module === 'yaml' && from !== 'text').map(said)).toEqual([]);
  });

  test('nothing above editor knows the language server protocol', () => {
    const below = layers.slice(layers.indexOf('editor'));
    const knows = foreign.filter(({ from, module }) => module.startsWith('vscode-') && !below.includes(from));
    expect(knows.map(said)).toEqual([]);
  });

  test('nothing above host knows Node', () => {
    const below = layers.slice(layers.indexOf('host'));
    expect(
      foreign.filter(({ from, module }) => module.startsWith('node:') && !below.includes(from)).map(said),
    ).toEqual([]);
    const globals = files.filter((path) => {
      const layer = layerOf(relative(source, path).split(sep).join('/'));
      return (
        !below.includes(layer) &&
        /\b(process\.|Buffer\b|new Date\b|Date\.now|setTimeout|performance\.)/.test(
          readFileSync(path, 'utf8'),
        )
      );
    });
    expect(globals.map((path) => relative(source, path))).toEqual([]);
  });

  test('each library is known in one room', () => {
    const allowed: Readonly<Record<string, readonly string[]>> = {
      yaml: ['text'],
      zod: ['format', 'text'],
      '@noble/hashes/sha2.js': ['card', 'project'],
      '@noble/hashes/utils.js': ['card', 'project'],
      'vscode-languageserver-textdocument': ['editor', 'protocol', 'cli'],
      'vscode-languageserver-types': ['editor'],
      'vscode-languageserver': ['protocol'],
      'vscode-languageserver/node': ['host'],
      picocolors: ['cli'],
      diff: ['fixes'],
    };
    const libraries = foreign.filter(({ module }) => !module.startsWith('node:'));
    expect(
      libraries.filter(({ from, module }) => allowed[module]?.includes(from) !== true).map(said),
    ).toEqual([]);
  });

  test('the definitions of the format are imported for their types only: what they need is not shipped', () => {
    const defined = [
      'circuit',
      'definitions',
      'instruments',
      'json-schema',
      'parts',
      'procedure',
      'sources',
      'steps',
      'values',
    ];
    const paths = defined.map((name) => `format/${name}.ts`);
    const loading = own.filter(
      (one) => one.from !== 'format' && !one.typeOnly && paths.includes(target(one)),
    );
    expect(loading.map(said)).toEqual([]);
    const ofWords = own.filter((one) => one.file === 'format/words.ts' || one.file === 'format/walker.ts');
    expect(ofWords.filter(({ typeOnly }) => !typeOnly).map(said)).toEqual([]);
  });

  test('the extension imports of the server what it says to it, and functions of which there shall be one', () => {
    const from = (file: string): readonly string[] => [
      ...new Set(ofServer.filter((one) => one.file === file).flatMap(({ names }) => names)),
    ];
    expect([...new Set(ofServer.map(({ file }) => file))].sort()).toEqual([
      'host/write-file.ts',
      'protocol/messages.ts',
    ]);
    expect(from('host/write-file.ts')).toEqual(['writeTextFile']);
    const functions = Object.entries(messages)
      .filter(([, value]) => typeof value === 'function')
      .map(([name]) => name);
    expect(functions.sort()).toEqual(['nameWithoutKind', 'visible']);
    expect(from('protocol/messages.ts')).toEqual(expect.arrayContaining(functions));
    const passedOn = imports.filter(({ file }) => file === 'protocol/messages.ts').map(target);
    expect(passedOn.sort()).toEqual(['format/file-kinds.ts', 'model/printable.ts']);
  });

  test('outside the source, only the manifest and the schema are imported', () => {
    const outside = own.filter((one) => target(one).startsWith('..')).map((one) => target(one));
    expect([...new Set(outside)].sort()).toEqual([
      '../../package.json',
      '../../schemas/procedure.schema.json',
    ]);
  });
});
