import { posix } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../server/src/project/analysis.ts';
import { fileId, fileNamed, homeOf, nameOf, wayTo } from '../../server/src/project/file-names.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';

/* A file has one id, however its name is spelled. */

describe('paths', () => {
  test.each([
    ['p.yaml', ['./p.yaml', './/p.yaml', 'a/../p.yaml', './a/./../p.yaml']],
    ['in/p.yaml', ['in//p.yaml', './in/p.yaml', 'in/./p.yaml', 'in/a/../p.yaml', 'in///p.yaml']],
    ['../p.yaml', ['./../p.yaml', 'a/../../p.yaml']],
    ['/v/p.yaml', ['/v//p.yaml', '/v/./p.yaml', '/../v/p.yaml', '/v/a/../p.yaml']],
    ['C:/v/p.yaml', ['c:/v/p.yaml', 'C:/v/./p.yaml']],
  ])('%s', (id, spellings) => {
    expect(spellings.map(fileId)).toEqual(spellings.map(() => id));
    expect(fileId(id)).toBe(id);
  });

  // `path.posix.normalize` of Node.js is the reference: it resolves `.`, `..` and empty steps.
  test('are what Node.js makes of them', () => {
    const step = fc.constantFrom('.', '..', '', 'a', 'b c', 'ä', '%41', '...', '.x');
    const path = fc
      .tuple(fc.boolean(), fc.array(step, { maxLength: 8 }))
      .map(([rooted, steps]) => `${rooted ? '/' : ''}${[...steps, 'x'].join('/')}`)
      .filter((text) => !text.startsWith('//'));
    fc.assert(
      fc.property(path, (text) => {
        expect(fileId(text)).toBe(posix.normalize(text));
      }),
      { numRuns: 500, seed: 20_411 },
    );
  });
});

describe('URIs', () => {
  test.each([
    [
      'file:///c%3A/vans/a%20b.parts.yaml',
      [
        'file:///c:/vans/a%20b.parts.yaml',
        'file:///C:/vans/a b.parts.yaml',
        'file:///C%3a/vans/./a%20b.parts.yaml',
        'FILE:///c%3A//vans/x/../a%20b.parts.yaml',
        'file://localhost/c%3A/vans/a%20b.parts.yaml',
        'file:/c:/vans/%61%20b%2Eparts.yaml',
      ],
    ],
    [
      'file:///v/K%C3%A4fer%281%29.parts.yaml',
      ['file:///v/Käfer(1).parts.yaml', 'file:///v/K%c3%a4fer(1).parts.yaml'],
    ],
    ['vscode-remote://ssh%2Bvan/v/p.parts.yaml', ['vscode-remote://ssh%2Bvan/v//p.parts.yaml']],
    ['untitled:Untitled-1', ['untitled:Untitled-1']],
  ])('%s', (id, spellings) => {
    expect([...new Set(spellings.map(fileId))].map((one) => one.toLowerCase())).toEqual([id.toLowerCase()]);
    expect(fileId(fileId(id))).toBe(fileId(id));
  });

  // The WHATWG parser of Node.js is the reference for what two URIs name: https://url.spec.whatwg.org, 4.4.
  test('lead where they led', () => {
    const step = fc.constantFrom('.', '..', 'a', 'b%20c', 'ä', '%C3%A4', '(1)', '%2e', "it's", '%25');
    fc.assert(
      fc.property(fc.array(step, { maxLength: 8 }), (steps) => {
        const uri = `file:///${[...steps, 'x'].join('/')}`;
        const way = (href: string): string => decodeURIComponent(new URL(href).pathname);
        expect(way(fileId(uri))).toBe(way(uri));
        expect(fileId(new URL(uri).href)).toBe(fileId(uri));
      }),
      { numRuns: 500, seed: 20_412 },
    );
  });
});

describe('a name in `uses`', () => {
  const spellings = [
    'k.parts.yaml',
    './k.parts.yaml',
    './/k.parts.yaml',
    'in/../k.parts.yaml',
    '../van/k.parts.yaml',
  ];

  test.each([
    ['van/a.procedure.yaml', 'van/k.parts.yaml', ['']],
    ['file:///c%3A/ws/van/a.procedure.yaml', 'file:///c%3A/ws/van/k.parts.yaml', ['file:///C:/ws']],
  ])('means one file, however it is spelled, seen from %s', (from, id, folders) => {
    for (const name of spellings) expect(fileNamed(from, name, folders)).toMatchObject({ id });
  });

  test('is looked for as one file, and one text counts', () => {
    const asked: string[] = [];
    const snapshot = snapshotOf([], {
      folders: ['./'],
      read: (id) => {
        asked.push(id);
        return { text: 'format: 1\n' };
      },
    });
    for (const name of spellings) snapshot.find('./van//a.procedure.yaml', name);
    expect(asked).toEqual(['van/k.parts.yaml']);
  });

  test('must not lead out, in whatever way it is spelled', () => {
    for (const name of ['../../k.parts.yaml', 'in/../../../k.parts.yaml', './../..//k.parts.yaml'])
      expect(fileNamed('van/a.procedure.yaml', name, [''])).toHaveProperty('problem');
    expect(fileNamed('file:///ws/a.procedure.yaml', '%2e%2e/k.parts.yaml', ['file:///ws'])).toMatchObject({
      id: 'file:///ws/%252e%252e/k.parts.yaml',
    });
  });

  test('of a text that lies nowhere yet says what to do', () => {
    expect(fileNamed('untitled:Untitled-1', 'k.parts.yaml', ['file:///ws'])).toEqual({
      problem: expect.stringContaining('Save this file first') as string,
    });
  });

  test('that is written as on disk but for its letters is refused: it works on some machines only', () => {
    const disk = 'van/K30.parts.yaml';
    const snapshot = snapshotOf([], {
      folders: [''],
      locate: (id) => ({ id: id.toLowerCase() === disk.toLowerCase() ? disk : id }),
      read: () => ({ text: 'format: 1\n' }),
    });
    expect(snapshot.find('van/a.procedure.yaml', 'K30.parts.yaml')).toMatchObject({ id: disk });
    expect(snapshot.find('van/a.procedure.yaml', 'k30.parts.yaml')).toEqual({
      problem: '`k30.parts.yaml` cannot be used: on disk its name is written `van/K30.parts.yaml`.',
    });
  });
});

test('a file is analysed under its one id', () => {
  const snapshot = snapshotOf([{ id: './van//a.procedure.yaml', text: 'format: 2\n' }]);
  const analysis = analyse(snapshot, 'van/x/../a.procedure.yaml');
  expect(analysis.file).toBe('van/a.procedure.yaml');
  expect(analysis.procedure().findings.map(({ subject }) => subject)).toEqual(['2']);
  expect(analyse(snapshot, 'van/a.procedure.yaml')).toBe(analysis);
});

test('a file may use what lies in the widest folder around it, else in its own', () => {
  const folders = ['file:///ws/van', 'file:///ws', 'file:///other'];
  expect(homeOf('file:///ws/van/a.procedure.yaml', folders)).toBe('file:///ws');
  expect(homeOf('file:///wsx/van/a.procedure.yaml', folders)).toBe('file:///wsx/van');
  expect(homeOf('../van/a.procedure.yaml', [''])).toBe('../van');
});

test('names are told as people write them', () => {
  expect(nameOf('file:///v/K%C3%A4fer%20%281%29.procedure.yaml')).toBe('Käfer (1).procedure.yaml');
  expect(nameOf('v/K%20.procedure.yaml')).toBe('K%20.procedure.yaml');
  expect(wayTo('file:///v/%C3%A4')).toBe(wayTo('/v/ä'));
});
