import { describe, expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { mostUsed } from '../../server/src/text/uses.ts';
import { good } from './good.ts';

/*
 * A parts file is checked as a file where it is used: what is an error when it is checked by itself is one error at the
 * entry of `uses`, with the first of them.
 */

const own = 'van/a.procedure.yaml';
const parts = 'van/k.parts.yaml';

type Tree = Readonly<Record<string, unknown>>;

const whole = parse(good) as Tree;
const headKeys = ['format', 'title', 'applies-to', 'revision', 'requires', 'conditions', 'network', 'steps'];
const isHead = ([key]: readonly [string, unknown]): boolean => headKeys.includes(key);
const sections = Object.fromEntries(Object.entries(whole).filter((entry) => !isHead(entry)));
const partsTree: Tree = {
  format: 1,
  title: 'Halden V4, restraint system',
  uses: ['l.parts.yaml'],
  ...sections,
};
const using = stringify({
  ...Object.fromEntries(Object.entries(whole).filter(isHead)),
  uses: ['k.parts.yaml'],
});

function errorsOf(files: Readonly<Record<string, string>>, id: string) {
  const snapshot = snapshotOf(
    Object.entries(files).map(([name, text]) => ({ id: name, text })),
    { folders: [''], read: () => null },
  );
  const read = readProcedure({ id, text: files[id] ?? '' }, snapshot.find);
  return read.findings
    .filter(({ severity }) => severity === 'error')
    .map(({ rule, message, at }) => {
      const { from, to } = read.range(at);
      const lines = (files[id] ?? '').slice(0, from).split('\n').length;
      return { rule, message, line: lines, place: (files[id] ?? '').slice(from, to) };
    });
}

const others = { 'van/l.parts.yaml': 'format: 1\n' };

/** What is told at the entry of `uses`, where the file by itself has these errors. */
function expectedOf(text: string): readonly string[] {
  const alone = errorsOf({ [parts]: text, ...others }, parts);
  const [first] = alone;
  if (first === undefined) return [];
  const more = alone.length === 1 ? '' : ` It has ${alone.length} errors in all.`;
  return [`\`${parts}\`, line ${first.line}: ${first.message}${more}`];
}

function toldAtUse(text: string): readonly string[] {
  return errorsOf({ [own]: using, [parts]: text, ...others }, own)
    .filter(({ rule, place }) => rule === 'parts-file' && place === 'k.parts.yaml')
    .map(({ message }) => message);
}

const sound = stringify(partsTree);

describe('a parts file is checked as a file where it is used', () => {
  test('one without a mistake has none there', () => {
    expect([
      expectedOf(sound),
      toldAtUse(sound),
      errorsOf({ [own]: using, [parts]: sound, ...others }, own),
    ]).toEqual([[], [], []]);
  });

  const damaged: readonly (readonly [string, string])[] = [
    ['another version of the format', sound.replace('format: 1', 'format: 2')],
    ['no version of the format', sound.replace('format: 1\n', '')],
    ['a version that is no number', sound.replace('format: 1', 'format: one')],
    ['a list', `- ${sound.replaceAll('\n', '\n  ')}`],
    ['plain text', 'Parts of the Halden V4'],
    ['plain text with a comment', 'Parts #of the Halden V4'],
    ['only a comment', '# format: 1\n'],
    ['nothing', ''],
    ['blank lines', '\n\n  \n'],
    ['more than 1 MiB', `${sound}# ${'x'.repeat(1024 * 1024)}\n`],
    ['a character that is no text', `${sound}\u0000`],
    ['two documents', `${sound}---\n${sound}`],
    ['steps', `${sound}steps:\n  - ignition: off\n`],
    ['waivers', `${sound}waivers:\n  - { rule: repeats, reason: So it is taught. }\n`],
    ['a network', `${sound}network:\n  - { part: stage-1, between: [a, ground] }\n`],
    ['an unknown key', `${sound}conectors: {}\n`],
    ['a key of a later version', `${sound}faults: {}\n`],
    ['an open quote', `${sound}title: "open\n`],
    ['one key twice', `${sound}parts: {}\n`],
  ];
  test.each(damaged)('with %s', (_, text) => {
    const expected = expectedOf(text);
    expect(expected).toHaveLength(1);
    expect(toldAtUse(text)).toEqual(expected);
  });

  const values = [
    null,
    '',
    'x',
    true,
    7,
    [],
    {},
    ['x'],
    [null],
    [['x']],
    { x: 'x' },
    { x: null },
    { '1 x': {} },
  ];
  const added = ['loads', 'entries', 'assemblies', 'routines', 'steps', 'network', 'waivers'];
  const keys = [...new Set([...Object.keys(partsTree), ...added])];
  test.each(keys)('with whatever stands at `%s`', (key) => {
    const mutants = values.map((value) => stringify({ ...partsTree, [key]: value }, { nullStr: '' }));
    const without = stringify(
      Object.fromEntries(Object.entries(partsTree).filter(([other]) => other !== key)),
    );
    for (const text of [...mutants, without]) expectSameAtUse(text);
  });

  test.each(Object.keys(sections))(
    'with one line of `%s` left out, or with another word in it',
    (section) => {
      const lines = sound.split('\n');
      const from = lines.indexOf(`${section}:`);
      const length = lines.slice(from + 1).findIndex((line) => !line.startsWith(' '));
      for (let at = from + 1; at <= from + length; at += 1) {
        expectSameAtUse(lines.toSpliced(at, 1).join('\n'));
        const word = lines[at]?.replace(/[^ :]+(?=:?$)/, 'x') ?? '';
        expectSameAtUse(lines.toSpliced(at, 1, word).join('\n'));
      }
    },
  );
});

/**
 * What is wrong with a name in `uses` is told in the words of that name. How many errors there are is another number
 * where the text is broken: a procedure leaves out the names that may have been lost with it.
 */
function expectSameAtUse(text: string): void {
  const [told, expected] = [toldAtUse(text), expectedOf(text)];
  const isBroken = errorsOf({ [parts]: text, ...others }, parts).some(({ rule }) => rule === 'yaml');
  if (told[0]?.startsWith(`${parts} uses`) === true) expect(told.length, text).toBe(expected.length);
  else if (isBroken) expect(told.map(withoutCount), text).toEqual(expected.map(withoutCount));
  else expect(told, text).toEqual(expected);
}

function withoutCount(message: string): string {
  return message.replace(/ It has \d+ errors in all\.$/, '');
}

describe('parts files that use one another', () => {
  const using = (name: string): string => `format: 1\ntitle: A\nuses: [${name}]\n`;

  test('a mistake further on is told where the file leads there, with the name of the file', () => {
    const files = {
      'a.procedure.yaml': using('k.parts.yaml'),
      'k.parts.yaml': using('l.parts.yaml'),
      'l.parts.yaml': 'format: 1\nsteps: []\n',
    };
    for (const id of ['a.procedure.yaml', 'k.parts.yaml'])
      expect(errorsOf(files, id).filter(({ rule }) => rule === 'parts-file')).toEqual([
        {
          rule: 'parts-file',
          line: 3,
          place: id === 'k.parts.yaml' ? 'l.parts.yaml' : 'k.parts.yaml',
          message: expect.stringMatching(/^`l\.parts\.yaml`, line 2: `steps` is not a key/) as string,
        },
      ]);
  });

  test('a file that is named in two places is told of where the first file names it itself', () => {
    const files = {
      'a.procedure.yaml': using('k.parts.yaml, l.parts.yaml'),
      'k.parts.yaml': using('l.parts.yaml'),
      'l.parts.yaml': 'format: 2\n',
    };
    const told = errorsOf(files, 'a.procedure.yaml').filter(({ rule }) => rule === 'parts-file');
    expect(told.map(({ place }) => place)).toEqual(['l.parts.yaml']);
  });

  /** So many parts files, each of which uses the next; the last of them is given. */
  const chain = (count: number, last: string): Readonly<Record<string, string>> => ({
    'a.procedure.yaml': using('0.parts.yaml'),
    ...Object.fromEntries(
      Array.from({ length: count }, (_, at) => [
        `${at}.parts.yaml`,
        at === count - 1 ? last : using(`${at + 1}.parts.yaml`),
      ]),
    ),
  });

  test.each([
    ['is followed to its end', mostUsed, '`199.parts.yaml`, line 1: This file is written in format 3'],
    ['is followed to the limit, which is told', mostUsed + 1, 'More than 200 parts files are used'],
    ['of thousands is no harder', 6000, 'More than 200 parts files are used'],
  ])('a chain %s', (_, count, says) => {
    const told = errorsOf(chain(count, 'format: 3\n'), 'a.procedure.yaml');
    expect(told.filter(({ rule }) => rule === 'parts-file')).toMatchObject([
      { place: '0.parts.yaml', message: expect.stringContaining(says) as string },
    ]);
  });

  test('a long circle is told in few words', () => {
    const told = errorsOf(chain(150, using('0.parts.yaml')), 'a.procedure.yaml');
    const [circle, ...others] = told.filter(({ rule }) => rule === 'parts-file');
    expect(others).toEqual([]);
    expect(circle?.message).toContain('0.parts.yaml uses 1.parts.yaml uses ');
    expect(circle?.message).toContain('(143 more)');
    expect(circle?.message.endsWith('149.parts.yaml uses 0.parts.yaml.')).toBe(true);
  });
});
