import { describe, expect, test } from 'vitest';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { good } from './good.ts';

/* Parts files: what stands in them counts as if it stood in the file that uses them. */

const connectors = /\nconnectors:\n(?: .*\n)+/.exec(good)?.[0] ?? '';
const withoutConnectors = good.replace(connectors, '\n');

function read(files: Readonly<Record<string, string>>, id = 'van/a.procedure.yaml') {
  const snapshot = snapshotOf(
    Object.entries(files).map(([name, text]) => ({ id: name, text })),
    { folders: [''], read: () => null },
  );
  return readProcedure({ id, text: files[id] ?? '' }, snapshot.find);
}

const using = (...names: readonly string[]): string =>
  withoutConnectors.replace('requires:', `uses: [${names.join(', ')}]\nrequires:`);

function says(files: Readonly<Record<string, string>>): readonly string[] {
  return read(files).findings.map(({ rule, message, at }) => {
    const text = files['van/a.procedure.yaml'] ?? '';
    const { from, to } = read(files).range(at);
    return `${text.slice(from, to)} ${rule}: ${message}`;
  });
}

describe('a parts file', () => {
  test('gives what stands in it, and keeps its places', () => {
    const parts = `format: 1${connectors}`;
    const { procedure, findings, range, used } = read({
      'van/a.procedure.yaml': using('shared/k.parts.yaml'),
      'van/shared/k.parts.yaml': parts,
    });
    expect(findings).toEqual([]);
    expect(used.map(({ file }) => file.id)).toEqual(['van/shared/k.parts.yaml']);
    const { from, to } = range({ file: 'van/shared/k.parts.yaml', path: ['connectors', 'K30'], part: 'key' });
    expect(parts.slice(from, to)).toBe('K30');
    expect(procedure.elsewhere.get('connectors/K30')).toBe('van/shared/k.parts.yaml');
    expect(procedure.connectors).toEqual(readProcedure({ id: 'x', text: good }).procedure.connectors);
  });

  test('may use others, up and down the folders', () => {
    const { findings, used } = read({
      'van/a.procedure.yaml': using('../b.parts.yaml'),
      'b.parts.yaml': 'format: 1\nuses: [van/c.parts.yaml]\n',
      'van/c.parts.yaml': `format: 1${connectors}`,
    });
    expect(findings).toEqual([]);
    expect(used.map(({ file }) => file.id)).toEqual(['van/c.parts.yaml', 'b.parts.yaml']);
  });

  test('by itself is checked without steps', () => {
    const alone = read({ 'k.parts.yaml': `format: 1${connectors}` }, 'k.parts.yaml');
    expect(alone.findings).toEqual([]);
    expect(read({ 'k.parts.yaml': 'format: 1\nsteps: []\n' }, 'k.parts.yaml').findings).toMatchObject([
      { rule: 'unknown-key', subject: 'steps' },
    ]);
  });
});

describe('what is wrong with a use', () => {
  const own = 'van/a.procedure.yaml';

  test('no such file, outside the workspace, not named so', () => {
    expect(says({ [own]: using('k.parts.yaml') })).toEqual([
      'k.parts.yaml parts-file: There is no file `k.parts.yaml`.',
    ]);
    expect(says({ [own]: using('../../k.parts.yaml') })).toEqual([
      expect.stringContaining('lies outside the workspace'),
    ]);
    expect(says({ [own]: using('/k.parts.yaml') })).toEqual([
      expect.stringContaining('as seen from this file'),
    ]);
    expect(says({ [own]: using('k.yaml') })).toEqual([expect.stringContaining('named `NAME.parts.yaml`')]);
  });

  test('circles', () => {
    const files = {
      [own]: using('k.parts.yaml'),
      'van/k.parts.yaml': `format: 1\nuses: [l.parts.yaml]${connectors}`,
      'van/l.parts.yaml': 'format: 1\nuses: [k.parts.yaml]\n',
    };
    expect(says(files)).toEqual([
      expect.stringContaining('van/k.parts.yaml uses van/l.parts.yaml uses van/k.parts.yaml'),
    ]);
  });

  test('errors of its own are told once, with the first of them', () => {
    const files = {
      [own]: using('k.parts.yaml'),
      'van/k.parts.yaml': `format: 1${connectors.replaceAll('2..15 mΩ', '2..15 V')}`,
    };
    expect(says(files)).toEqual([
      expect.stringMatching(
        /^k\.parts\.yaml parts-file: `van\/k\.parts\.yaml`, line \d+: .* errors in all\.$/,
      ),
    ]);
    const broken = { [own]: using('k.parts.yaml'), 'van/k.parts.yaml': 'format: 1\ntitle: "open\n' };
    expect(says(broken)).toEqual([expect.stringContaining('k.parts.yaml parts-file')]);
  });

  test('a section of another shape is not hidden by that of a parts file', () => {
    const files = {
      [own]: using('k.parts.yaml').replace('requires:', 'connectors: K30\nrequires:'),
      'van/k.parts.yaml': `format: 1${connectors}`,
    };
    expect(says(files).filter((line) => line.includes('`connectors` takes'))).toHaveLength(1);
  });

  test('a name that stands in both', () => {
    const files = {
      [own]: good.replace('requires:', 'uses: [k.parts.yaml]\nrequires:'),
      'van/k.parts.yaml': 'format: 1\nconnectors: { K30: { contact: 5 mΩ } }\n',
    };
    expect(says(files)).toEqual([expect.stringContaining('k.parts.yaml duplicate-id: `K30` is defined')]);
  });
});

describe('what is needed', () => {
  test('may stand in a parts file, and has to stand in one of them', () => {
    const files = {
      'van/a.procedure.yaml': using('k.parts.yaml').replace(/\nloops:\n(?: .*\n)+/, '\n'),
      'van/k.parts.yaml': `format: 1${connectors}`,
    };
    expect(says(files).some((line) => line.includes('missing-key') && line.includes('`loops`'))).toBe(true);
  });
});
