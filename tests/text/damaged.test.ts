import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import type { ReadFile } from '../../server/src/text/read-procedure.ts';
import { good } from './good.ts';

/** Whatever is read: each finding says something, inside the file, on one line, and no two have the same key. */
function readSoundly(text: string): ReadFile {
  const read = readProcedure({ id: 'damaged', text });
  const wrong: string[] = [];
  for (const finding of read.findings) {
    for (const at of [finding.at, ...finding.related.map((one) => one.at)]) {
      const { from, to } = read.range(at);
      const inside = from >= 0 && from <= to && to <= text.length;
      if (!inside || /[\r\n]/.test(text.slice(from, to))) wrong.push(`${finding.message} at ${from}..${to}`);
      if (from === to && text.trim() !== '') wrong.push(`${finding.message} marks nothing at ${from}`);
    }
    if (finding.message.length < 10) wrong.push(`says nothing: ${finding.message}`);
  }
  const keys = read.findings.map(({ key }) => key);
  if (new Set(keys).size !== keys.length) wrong.push('two findings have the same key');
  expect(wrong, text).toEqual([]);
  return read;
}

test('every beginning of a file, cut behind a character, is read soundly', () => {
  for (let length = 0; length < good.length; length += 1) {
    const text = good.slice(0, length);
    const { findings } = readSoundly(text);
    // The steps start two thirds down: before them something is always missing.
    if (length < good.indexOf('steps:')) expect(findings.length, text).toBeGreaterThan(0);
  }
});

test('every file without one of its lines is read soundly', () => {
  const lines = good.split('\n');
  for (const index of lines.keys()) readSoundly(lines.filter((_, other) => other !== index).join('\n'));
});

test('every file from a line on is read soundly', () => {
  const lines = good.split('\n');
  for (const index of lines.keys()) readSoundly(lines.slice(index).join('\n'));
});

test('every file with a line end, a quote, a bracket or a colon put in somewhere is read soundly', () => {
  for (const put of ['\n', '"', '[', '}', ': ', '\t', ' #', '- ', '\r\n', '&', '*', '|']) {
    for (let at = 0; at < good.length; at += 29) readSoundly(good.slice(0, at) + put + good.slice(at));
  }
});

/** Keys that a procedure can be without. */
const optional: ReadonlySet<string> = new Set([
  'applies-to',
  'revision',
  'requires',
  'training',
  'protective',
  'conditions',
  'ambient',
  'wait',
  'reserve',
  'test-current',
  'codes',
  'too-low',
  'too-high',
  'leak',
  'no-fire',
  'shorting-bar',
  'pins',
  'K10',
  'K21',
  'section',
  'id',
  'outcomes',
  'within',
  'below',
  'else',
  'open',
  'stage-1-loop',
  'ok',
  'defect',
  'warning',
  'expect',
  'minutes',
  'leaves',
  'at',
]);

type Path = readonly (string | number)[];

function keysIn(value: unknown, path: Path = []): readonly Path[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, below]) => {
    const at = [...path, Array.isArray(value) ? Number(key) : key];
    return [at, ...keysIn(below, at)];
  });
}

function changed(
  path: Path,
  change: (parent: Record<string | number, unknown>, key: string | number) => void,
): string {
  const root = parse(good) as Record<string | number, unknown>;
  let parent = root;
  for (const step of path.slice(0, -1)) parent = parent[step] as Record<string | number, unknown>;
  change(parent, path.at(-1) ?? '');
  return stringify(root, { nullStr: '' });
}

test('every file without one of its keys is read soundly, and says so where the key is needed', () => {
  for (const path of keysIn(parse(good))) {
    const key = path.at(-1);
    if (typeof key !== 'string') continue;
    const { findings } = readSoundly(changed(path, (parent) => Reflect.deleteProperty(parent, key)));
    if (!optional.has(key)) expect(findings.length, path.join('/')).toBeGreaterThan(0);
  }
});

test('every file with something else at one of its keys is read soundly', () => {
  for (const path of keysIn(parse(good))) {
    for (const other of [null, '', 'x', true, [], {}, ['x'], { x: 'x' }, 'multi\nline']) {
      const { findings } = readSoundly(changed(path, (parent, key) => (parent[key] = other)));
      if (other === null) expect(findings.length, path.join('/')).toBeGreaterThan(0);
    }
  }
});

test('every file with one of its keys mistyped says so', () => {
  for (const path of keysIn(parse(good))) {
    const key = path.at(-1);
    if (typeof key !== 'string') continue;
    const text = changed(path, (parent) => {
      const value = parent[key];
      Reflect.deleteProperty(parent, key);
      parent[`${key}_`] = value;
    });
    expect(readSoundly(text).findings.length, path.join('/')).toBeGreaterThan(0);
  }
});

test('whatever is typed is read soundly', () => {
  const words = [
    'format: 1',
    'steps:',
    '- ',
    '  ',
    '    ',
    '\n',
    '\n',
    ': ',
    'unplug',
    'K30',
    '[',
    ']',
    '{',
    '}',
    ',',
    '"',
    "'",
  ];
  const signs = [
    '#',
    ' #x',
    '&a',
    '*a',
    '!t',
    '|',
    '>',
    '?',
    '%',
    '@',
    '---',
    '\t',
    '\r\n',
    'Ω',
    '\uD83D\uDD0C',
    '\\',
  ];
  const typed = fc
    .array(fc.constantFrom(...words, ...signs), { maxLength: 40 })
    .map((parts) => parts.join(''));
  fc.assert(
    fc.property(fc.oneof(typed, fc.string({ unit: 'binary', maxLength: 60 })), (text) => {
      readSoundly(text);
      readSoundly(`${good}${text}`);
    }),
    { numRuns: 600, seed: 71_005 },
  );
});
